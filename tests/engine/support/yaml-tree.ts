import { readYaml } from '../../../plugins/content/index.ts';
import { formatProblems, type MapNode, type SourceNode } from '../../../plugins/engine/index.ts';

/** YAML as the engine takes it, through the project's one reader. Throws on YAML that is not well formed. */
export function yamlTree(yaml: string, file = 'fold.md'): SourceNode {
  const { tree, problems } = readYaml(yaml, file);
  if (tree === undefined || problems.length > 0) throw new Error(formatProblems(problems) || 'no YAML');
  return tree;
}

/** As `yamlTree`, for YAML that is a map. */
export function yamlMap(yaml: string, file?: string): MapNode {
  const tree = yamlTree(yaml, file);
  if (tree.kind !== 'map') throw new Error(`not a map: ${yaml}`);
  return tree;
}
