import { defineConfig } from 'vitest/config';

/*
 * Three groups, so that a run of one file does only that file's preparations: the parts (quick, pure), the built site in
 * a real browser (one build, one server, one browser), and whole builds and commands (after all else, since
 * they load the machine and some are timed).
 */
export default defineConfig({
  test: {
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'parts',
          setupFiles: ['tests/support/same-draws.ts'],
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/astro/**', 'tests/commands/**'],
          testTimeout: 30_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: ['tests/site/support/global-setup.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'builds',
          include: ['tests/astro/**/*.test.ts', 'tests/commands/**/*.test.ts'],
          testTimeout: 300_000,
          hookTimeout: 300_000,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
