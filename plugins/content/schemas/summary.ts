import { z } from 'zod';

/** Raised whenever a field changes its meaning or goes away; new fields alone do not raise it. */
export const SUMMARY_VERSION = 1;

const length = z
  .strictObject({
    mm: z
      .string()
      .regex(/^-?\d+(\/\d+)?$/)
      .describe('Exact number of millimetres as a whole number or a fraction: `210`, `2159/10`.'),
    inches: z
      .string()
      .regex(/^-?\d+(\/\d+)?$/)
      .describe('The same length in inches, exact: `17/2`. One inch is 127/5 mm.'),
    printed: z.string().describe('As it is printed in this edition: `8 1/2 in`.'),
  })
  .meta({ id: 'length', description: 'A length, exact and as printed.' });

const figure = z
  .union([length, z.number()])
  .meta({ id: 'figure', description: 'A length, or a plain number such as a count of panels.' });

const place = z
  .strictObject({
    file: z.string().describe("File of the author's that it stands in."),
    line: z.int().min(1).describe('Line, from 1.'),
    column: z.int().min(1).describe('Column, from 1.'),
  })
  .meta({ id: 'place', description: 'A place in a file.' });

const parameter = z
  .strictObject({
    name: z.string().describe('Name in the fold language.'),
    label: z.string().describe('What it is, for people.'),
    value: figure.describe('Its value in this edition.'),
    word: z.string().nullable().describe('The chosen word, where the parameter is a choice.'),
    from: figure.nullable().describe('Least value that the fold allows.'),
    to: figure.nullable().describe('Greatest value that the fold allows.'),
    local: z
      .strictObject({
        name: z.string().describe('What makers of this edition call the size: `ISO A6`.'),
        for: z.string().describe('The size of the other edition that it stands for: `US A2`.'),
      })
      .nullable()
      .describe('Where the value comes from the table of local sizes; null where it is the one that was written.'),
  })
  .meta({ id: 'parameter', description: 'A size that the fold leaves open.' });

const band = z
  .strictObject({
    name: z.string().nullable().describe('Name of the band; null where a side is one measure.'),
    start: length.describe('Distance from the left or the top edge.'),
    size: length.describe('Its width or height, on the marks of this edition.'),
    exact: length.describe('The same before it was put on the marks.'),
  })
  .meta({ id: 'band', description: 'A column or a row of a piece, between two creases or edges.' });

const crease = z
  .strictObject({
    name: z.string().describe('Name of the crease, unique within its piece.'),
    runs: z.enum(['down', 'across']).describe('`down`: from top to bottom. `across`: from left to right.'),
    at: length.describe('Distance from the left edge (`down`) or from the top edge (`across`).'),
    fold: z.enum(['valley', 'mountain']).describe('`valley` brings the faces together, `mountain` the backs.'),
  })
  .meta({ id: 'crease', description: 'A crease from edge to edge.' });

const point = z
  .strictObject({
    x: length.describe('Distance from the left edge of the piece.'),
    y: length.describe('Distance from its top edge.'),
  })
  .meta({ id: 'point', description: 'A point of a piece, its face up.' });

const line = z
  .strictObject({
    name: z.string().describe('Name of the line, unique within its piece.'),
    does: z.enum(['crease', 'cut', 'perforation', 'mark']).describe('What is done along it.'),
    from: point.describe('Where it begins.'),
    to: point.describe('Where it ends; it may reach past the paper.'),
    folds: z
      .array(z.enum(['valley', 'mountain', 'both']))
      .describe('For a crease: one direction for the whole, or one for each stretch that other lines part it into.'),
  })
  .meta({ id: 'line', description: 'A straight line on a piece, beside the creases of its bands.' });

const join = z
  .strictObject({
    is: z
      .enum(['glue', 'pin', 'slide', 'slip', 'slot', 'rest', 'hang'])
      .describe('How the two are joined: `glue` is stuck flat, `slip` a lid or sleeve, `rest` stands upon.'),
    says: z.string().describe('The join as a maker reads it.'),
    part: z.string().describe('The panel that is joined.'),
    onto: z.string().describe('The panel that it is joined to.'),
    implied: z.boolean().describe('True where a stack or the tabs of a box bring the join with them.'),
  })
  .meta({ id: 'join', description: 'What holds two panels to each other, beside creases.' });

const piece = z
  .strictObject({
    name: z.string().describe('Name of the piece.'),
    stock: z.string().describe('Role of its paper; `stock` of the card says which supply that is.'),
    grain: z
      .enum(['across', 'down'])
      .nullable()
      .describe("Direction of the paper's grain on the drawing; null where it does not matter."),
    width: length.describe('Overall width, the sum of the columns.'),
    height: length.describe('Overall height, the sum of the rows.'),
    columns: z.array(band).describe('From left to right.'),
    rows: z.array(band).describe('From top to bottom.'),
    creases: z.array(crease).describe('All creases of the piece.'),
    lines: z.array(line).describe('All its other lines: creases, cuts, perforations and marks.'),
  })
  .meta({ id: 'piece', description: 'A piece of paper, its face up: across to the right, down the page.' });

const mass = z
  .strictObject({
    grams: z
      .string()
      .regex(/^\d+(\/\d+)?$/)
      .describe('Exact number of grams as a whole number or a fraction.'),
    ounces: z
      .string()
      .regex(/^\d+(\/\d+)?$/)
      .describe('The same in ounces, exact. One ounce is 28.349523125 g.'),
    printed: z.string().describe('As it is printed in this edition: `0.35 oz`.'),
  })
  .meta({ id: 'mass', description: 'A mass, exact and as printed.' });

const layer = z
  .strictObject({
    is: z
      .enum(['piece', 'coat', 'join', 'fill'])
      .describe('`piece`: taken up. `coat`: laid on. `join`: stuck or put together. `fill`: poured into a chamber.'),
    says: z.string().describe('The layer in a sentence.'),
    note: z.string().nullable().describe("The author's own words to it."),
    adds: length
      .nullable()
      .describe(
        'What it adds to the height where it lies, zero where that is too thin to count; null where it adds none or that is not known.',
      ),
    unknown: z.boolean().describe('True where its height is not known, so that it is missing from every sum.'),
    assumed: z.boolean().describe('True where no supply is named and a usual one stands in.'),
  })
  .meta({ id: 'layer', description: 'One layer of a card, or one thing done to it.' });

const thickness = z
  .strictObject({
    least: length.describe('Where it is thinnest.'),
    greatest: length.describe('Where it is thickest, its panels taken as flat plates; the envelope sees this.'),
    gives: length.describe('How much of the greatest gives when it is pressed: foam and filling.'),
    springback: length.describe('What shut folds add while nothing presses them; not in `greatest`.'),
    unknown: z.array(z.string()).describe('Roles whose thickness is not known: with any, the figures are too small.'),
    assumed: z.array(z.string()).describe('Roles that no supply was named for.'),
  })
  .meta({ id: 'thickness', description: 'How thick something is when it is closed.' });

const closed = z
  .strictObject({
    piece: z.string().describe('The first piece of what is folded.'),
    pieces: z.array(z.string()).describe('All pieces that hang together with it.'),
    pose: z.string().describe('The pose in which it is posted.'),
    width: length.describe('Width over everything when closed.'),
    height: length.describe('Height over everything when closed.'),
    deep: length.describe(
      'From the lowest to the highest panel; zero for flat paper without foam. What the paper itself adds stands in `thickness`.',
    ),
    flat: z.boolean().describe('False for what is posted standing up, as a box.'),
    orders: z
      .string()
      .nullable()
      .describe('In how many orders its panels can lie on each other; null where that was not counted.'),
    thickness: thickness.nullable().describe('How thick it is; null where it does not lie flat.'),
    plies: z
      .array(z.string())
      .nullable()
      .describe('One such order, from the bottom to the top; null where there is none.'),
  })
  .meta({ id: 'closed', description: 'A piece, or pieces that hang together, as posted.' });

const finding = z
  .strictObject({
    check: z.string().describe('Name of the check: `fits-envelope`.'),
    outcome: z.string().describe('Which of its outcomes.'),
    state: z
      .enum(['pass', 'question', 'fail', 'untested'])
      .describe(
        '`pass`: works. `question`: can be made, but looks like a slip. `fail`: will not work. `untested`: something needed is not stated.',
      ),
    label: z.string().describe('The check, for people.'),
    says: z.string().describe('The answer in a sentence, with its figures.'),
    remedy: z.string().nullable().describe('What to do about it.'),
    figure: figure.nullable().describe('The figure that was found.'),
    limit: figure.nullable().describe('What it was held against.'),
    witness: z.string().nullable().describe('The piece, panel, crease or measure that shows it.'),
    place: place.describe('Where the cure belongs.'),
    path: z.string().describe('Path in the frontmatter of that file: `cards[1].envelope`.'),
  })
  .meta({ id: 'finding', description: 'An answer of the dry fit.' });

const editionSchema = z
  .strictObject({
    system: z.enum(['inch', 'metric']).describe('The way of measuring it was made for.'),
    mark: length.describe('Every printed length is a whole number of these.'),
    sheet: z.string().describe('The sheet that the first piece is cut from.'),
    envelope: z.string().nullable().describe('The envelope, where one is named.'),
    parameters: z.array(parameter).describe('The sizes of the fold, in its order.'),
    pieces: z.array(piece).describe('All pieces of paper.'),
    joins: z.array(join).describe('What holds the pieces to each other, in the order of the fold.'),
    layers: z.array(layer).describe('All layers in the order of work.'),
    mass: z
      .strictObject({
        all: mass.describe('The whole card, without its envelope.'),
        parts: z
          .array(
            z.strictObject({
              is: z.enum(['panel', 'coat', 'glue', 'foam', 'filling']).describe('What it is.'),
              name: z.string().describe('The panel, the join or the filling.'),
              mass: mass.nullable().describe('What it weighs; null where that is not known.'),
            }),
          )
          .describe('Part by part, windows and cut-outs taken off.'),
        unknown: z.array(z.string()).describe('Roles whose weight is not known: with any, `all` is too little.'),
        assumed: z.array(z.string()).describe('Roles that no supply was named for.'),
      })
      .describe('What the card weighs.'),
    closed: z.array(closed).describe('What folds or is joined, as posted.'),
    findings: z.array(finding).describe('Every answer of the dry fit.'),
  })
  .meta({
    id: 'edition',
    description: 'A card sized for one way of measuring. It is not a conversion: the rule of the fold is applied anew.',
  });

export const editionsSchema = z.strictObject({
  inch: editionSchema.describe('In inches.'),
  metric: editionSchema.describe('In millimetres.'),
});

const card = z
  .strictObject({
    key: z.string().describe('Name of the card in addresses: `card`, or made from its name.'),
    name: z.string().describe('The card, for people.'),
    fold: z
      .strictObject({
        id: z.string().describe('Id of the fold kind.'),
        name: z.string().describe('Its name.'),
        family: z.string().nullable().describe('The family it belongs to.'),
      })
      .nullable()
      .describe('The fold kind; null where the card is given by a recipe alone.'),
    stock: z.record(z.string(), z.string()).describe('Role of each paper to the id of its supply.'),
    editions: editionsSchema.describe('The card in both ways of measuring.'),
  })
  .meta({ id: 'card', description: 'One card of the project.' });

const supply = z
  .strictObject({
    id: z.string().describe('Id of the supply.'),
    name: z.string().describe('The product.'),
    category: z.string().describe('What it is.'),
    maker: z.string().nullable().describe('Who makes it.'),
    for: z.string().nullable().describe('What it is used for in this project.'),
    amount: z.string().nullable().describe('How much is needed, in words.'),
    discontinued: z.boolean().describe('No longer made.'),
    substitutes: z.array(z.string()).describe('Ids of supplies that do the same job, the best first.'),
  })
  .meta({ id: 'supply', description: 'A product that the project uses.' });

/** The `project.json` beside each project: all that was computed, for other programs. */
export const projectSummarySchema = z
  .strictObject({
    schemaVersion: z.literal(SUMMARY_VERSION).describe('Version of this description.'),
    slug: z.string().describe('Name of the project in addresses.'),
    title: z.string().describe('Title of the post.'),
    summary: z.string().describe('One or two sentences.'),
    date: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/)
      .describe('Day of publication, year-month-day.'),
    updated: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/)
      .nullable()
      .describe('Day of the last real change.'),
    invented: z.boolean().describe('Whether the project is invented, as in a demonstration.'),
    techniques: z.array(z.string()).describe('Ids of the techniques used.'),
    tools: z.array(z.string()).describe('Tools needed.'),
    supplies: z.array(supply).describe('Products used, in the order of the post.'),
    cards: z.array(card).describe('None, one or several.'),
  })
  .meta({
    title: 'Project summary',
    description: 'A card project with its computed sizes and the findings of its dry fit.',
  });

export type ProjectSummary = z.infer<typeof projectSummarySchema>;
export type EditionSummary = z.infer<typeof editionSchema>;
export type LengthSummary = z.infer<typeof length>;
export type MassSummary = z.infer<typeof mass>;
export type ThicknessSummary = z.infer<typeof thickness>;
export type FigureSummary = z.infer<typeof figure>;
export type FindingSummary = z.infer<typeof finding>;

/** The description of `project.json` as JSON Schema (draft 2020-12). */
export function projectSummaryJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(projectSummarySchema, { target: 'draft-2020-12' }) as Record<string, unknown>;
}
