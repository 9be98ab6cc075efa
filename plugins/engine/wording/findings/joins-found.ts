import { counted, listed, named, type Sentences } from './sentence.ts';

export const joinsFound: Sentences<'joins-found'> = {
  found: ({ joins }) => ({
    says: `The panels are found that ${counted(joins, 'join')} ${joins === 1 ? 'holds' : 'hold'} to each other.`,
  }),
  'no-panel': ({ where, panel }) => ({
    says: `In ${named(where)}, ${named(panel)} is no panel: no paper is there.`,
    remedy: `Name a panel that is left when everything is cut away.`,
  }),
  'which-panel': ({ where, panel, choices }) => ({
    says: `In ${named(where)}, ${named(panel)} can mean ${listed(choices)}.`,
    remedy: `Write which of them is meant.`,
  }),
  'to-itself': ({ where, panel }) => ({
    says: `In ${named(where)}, ${named(panel)} is joined to itself.`,
    remedy: `Name two panels. When they are parts of one panel, put a crease or a cut between them.`,
  }),
};
