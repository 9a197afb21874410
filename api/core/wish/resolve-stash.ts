import type { Layer, StashInput, StashPiece, StashRequest } from '../contract.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { hasSelvages } from '../stash/stash-spec.ts';
import { DEFAULT_LAYERS, DEFAULTS, WASHES } from '../tables/defaults.ts';
import { checkStash } from './check-stash.ts';
import {
  keep,
  type Reading,
  type Resolved,
  readLengthField,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveCuts } from './resolve-block.ts';
import { resolveLayers } from './resolve-layers.ts';
import { resolveShape } from './resolve-shape.ts';

/**
 * Understands a question what pieces on hand give: lengths, defaults, names, and what the parts mean
 * to each other. Shape and ranges of plain numbers were checked before.
 *
 * @returns as `resolvePlan` does
 */
export function resolveStash(request: StashRequest): Outcome<Resolved<StashInput>> {
  const reading = startReading(request.unit);
  const pieces = request.pieces.map((piece, index) => resolvePiece(reading, piece, index));
  const block = resolveStashBlock(reading, request.block ?? {});
  const { cuts, places } = resolveCuts(reading, request.cuts);
  const layers = resolveStashLayers(reading, request);
  const shape = resolveShape(reading, request.shape);
  if (request.touch !== undefined) keep(reading, ['touch'], request.touch);
  const input: StashInput = {
    unit: reading.unit,
    pieces,
    block,
    cuts,
    layers,
    shape,
    ...(request.touch !== undefined && { touch: request.touch }),
    ...resolveManner(reading, request),
  };
  checkStash(reading, input, places);
  if (reading.faults.length > 0) return fail(reading.faults);
  return succeed({ input, assumptions: reading.assumptions, query: writeQuery(reading.kept) });
}

function resolvePiece(
  reading: Reading,
  piece: StashPiece,
  index: number,
): StashInput['pieces'][number] {
  const at = (name: string) => ['pieces', index, name];
  keep(reading, at('id'), piece.id);
  keep(reading, at('role'), piece.role);
  const print = readPlain(reading, { path: at('print'), given: piece.print, fallback: piece.id });
  const width = readLengthField(reading, {
    path: at('width'),
    given: piece.width,
    limit: 'pieceSide',
  });
  const length = readLengthField(reading, {
    path: at('length'),
    given: piece.length,
    limit: 'lengthLeft',
  });
  const count = readPlain(reading, { path: at('count'), given: piece.count, fallback: 1 });
  const directional = readPlain<boolean>(reading, {
    path: at('directional'),
    given: piece.directional,
    fallback: false,
  });
  const isWide = hasSelvages(width, reading.unit);
  const selvage = readLengthField(reading, {
    path: at('selvage'),
    given: piece.selvage,
    limit: 'selvage',
    fallback: isWide ? DEFAULTS[reading.unit].selvage : 0,
    why: isWide
      ? `Cut away at each edge of ${piece.id}, which is as wide as a bolt`
      : `Nothing cut away at the edges of ${piece.id}, which is narrower than a bolt`,
  });
  return { id: piece.id, role: piece.role, print, width, length, count, directional, selvage };
}

function resolveStashBlock(
  reading: Reading,
  given: NonNullable<StashRequest['block']>,
): StashInput['block'] {
  const path = ['block', 'cut'];
  const cut =
    given.cut === undefined
      ? {}
      : { cut: readLengthField(reading, { path, given: given.cut, limit: 'cut' }) };
  const seam = readLengthField(reading, {
    path: ['block', 'seam'],
    given: given.seam,
    limit: 'seam',
    fallback: DEFAULTS[reading.unit].seam,
    why: 'A wide allowance makes full fringe and forgives snips',
  });
  return { ...cut, seam };
}

/** The sandwich as a plan has it, less what the pieces tell: without layers, those of the pieces. */
function resolveStashLayers(reading: Reading, request: StashRequest): StashInput['layers'] {
  const hasMiddle = request.pieces.some(({ role }) => role === 'middle');
  const usual: readonly Layer[] = hasMiddle
    ? [{ role: 'top' }, { role: 'middle' }, { role: 'backing' }]
    : DEFAULT_LAYERS;
  const own: Reading = { ...reading, assumptions: [] };
  const layers = resolveLayers(own, request.layers ?? usual);
  const isOfRoll = /^layers\.\d+\.(prints|width|selvage)/;
  reading.assumptions.push(...own.assumptions.filter(({ path }) => !isOfRoll.test(path)));
  return layers.map(({ role, fabric, shrink, shrinkWashes, prewashed, gsm, thickness }) => {
    return { role, fabric, shrink, shrinkWashes, prewashed, gsm, thickness };
  });
}

function resolveManner(
  reading: Reading,
  request: StashRequest,
): Pick<StashInput, 'grain' | 'washes' | 'squaring' | 'usable'> {
  return {
    grain: readPlain<'alternating' | 'aligned'>(reading, {
      path: ['grain'],
      given: request.grain,
      fallback: 'alternating',
      why: 'Every other block is turned a quarter, so that the quilt shrinks alike both ways',
      source: SOURCES.model,
    }),
    washes: readPlain(reading, {
      path: ['washes'],
      given: request.washes,
      fallback: WASHES,
      why: 'Washed sizes are those after the first wash and dry',
    }),
    squaring: readLengthField(reading, {
      path: ['squaring'],
      given: request.squaring,
      limit: 'squaring',
      fallback: 0,
      why: 'Pieces are measured between straight edges',
    }),
    usable: readLengthField(reading, {
      path: ['usable'],
      given: request.usable,
      limit: 'usable',
      fallback: DEFAULTS[reading.unit].usable,
      why: 'What is left and narrower than a binding strip is not worth keeping',
    }),
  };
}
