/**
 * Groups of spectral lines by IEC 61000-4-7:2002 + A1:2008. Lines are given as squares of their r.m.s. values, about 5 Hz
 * apart; order n stands at line n·spacing, with 10 lines per order at 50 Hz and 12 at 60 Hz. Results are squares, too,
 * NaN where a line they need is NaN or lies beyond the last.
 */

/** Harmonic subgroup: the line of the harmonic and the one on either side. */
export function subgroupSquare(squares: Float64Array, order: number, spacing: number): number {
  return sum(squares, order * spacing - 1, order * spacing + 1);
}

/** Harmonic group: all lines from half way below to half way above, the outermost two counted by half. */
export function groupSquare(squares: Float64Array, order: number, spacing: number): number {
  const line = order * spacing;
  const half = spacing / 2;
  const edges = sum(squares, line - half, line - half) + sum(squares, line + half, line + half);
  return edges / 2 + sum(squares, line - half + 1, line + half - 1);
}

/** Interharmonic centred subgroup above an order: the lines between two orders without those next to either. */
export function interharmonicSquare(squares: Float64Array, orderBelow: number, spacing: number): number {
  return sum(squares, orderBelow * spacing + 2, (orderBelow + 1) * spacing - 2);
}

function sum(squares: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let k = from; k <= to; k++) total += squares[k] ?? Number.NaN;
  return total;
}
