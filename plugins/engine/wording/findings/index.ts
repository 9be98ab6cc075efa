export { CHECK_LABELS, sayFinding } from './say-finding.ts';
