import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { mostTrackHeights, mostTrackPieces, trackProfile } from '../../../shared-types/track.ts';
import { openedTrackless } from './temporary-catalogue.ts';

/* The lists of a track, which the tables keep as JSON, tried past every schema; schema.spec.ts has all other constraints. */

const level = { gradePct: 0, speedKmh: null, share: 1 };
const mostStretches = longestOf(trackProfile.shape.pieces.element.shape.stretches, level);

/** Where a schema stops a list: it says so when the list is far too long. */
function longestOf(list: z.ZodArray, entry: unknown): number {
  const issue = list.safeParse(new Array(100_000).fill(entry)).error?.issues[0];
  if (issue?.code !== 'too_big') throw new Error('The list has no limit.');
  return Number(issue.maximum);
}

function trackRow(leg: number, heights = '[]', pace = 'computed'): string {
  return `INSERT INTO leg_tracks VALUES
    ('demo-tour', ${leg}, '${pace}', 'Pass', 80, 900, 900, NULL, 41, 45, 0, 0, '${heights}')`;
}

function pieceRow(position: number, stretches: string): string {
  return `INSERT INTO leg_track_pieces VALUES ('demo-tour', 0, ${position}, 40, '${stretches}')`;
}

/** As many as `count` of the same. */
function listOf(count: number, entry: string): string {
  return `[${Array.from({ length: count }, () => entry).join(',')}]`;
}

describe('a track in raw SQL', () => {
  it.each([
    ['an unknown pace', trackRow(0, '[]', 'hurried')],
    ['heights that are no JSON', trackRow(0, '[1, 2')],
    ['heights that are no list', trackRow(0, '{"m": 5}')],
    ['one height too many', trackRow(0, listOf(mostTrackHeights + 1, '5'))],
    ['stretches that are no JSON', pieceRow(1, 'steep')],
    ['stretches that are no list', pieceRow(1, '0')],
    ['a piece without a stretch', pieceRow(1, '[]')],
    ['one stretch too many', pieceRow(1, listOf(mostStretches + 1, '[0,null,1]'))],
    ['one piece too many', pieceRow(mostTrackPieces, '[[0,null,1]]')],
  ])('is refused for %s', (_, sql) => {
    const { write } = openedTrackless();
    expect(() => write.exec(sql)).toThrow(/CHECK constraint failed/);
  });

  it.each([
    ['a track of no leg', trackRow(50)],
    ['a piece of no track', pieceRow(1, '[[0,null,1]]')],
  ])('is refused for %s', (_, sql) => {
    expect(() => openedTrackless().write.exec(sql)).toThrow(/FOREIGN KEY constraint failed/);
  });

  it('is stored up to its limits', () => {
    const { write } = openedTrackless();
    write.exec(trackRow(0, listOf(mostTrackHeights, '5')));
    write.exec(pieceRow(mostTrackPieces - 1, listOf(mostStretches, '[0,null,1]')));
    expect(write.prepare('SELECT count(*) FROM leg_track_pieces').pluck().get()).toBe(1);
  });
});
