import { line, magnitudeOf, type Phasor, symmetricalComponents } from "./phasor.js";

/** A voltage or current over one window. */
export interface Oscillation {
  readonly rms: number;
  /** Lines as r.m.s. phasors, real and imaginary part by turns. */
  readonly spectrum: Float64Array;
}

/** The terms of IEEE 1459-2010 over one window, in W, var and VA; see `phasePower` and `systemPower`. */
export interface PowerTerms {
  readonly p: number;
  readonly p1: number;
  /** Positive where the current lags. */
  readonly q1: number;
  readonly s: number;
  readonly s1: number;
  readonly di: number;
  readonly dv: number;
  readonly sh: number;
}

type Three<T> = readonly [T, T, T];

/**
 * One phase (IEEE 1459-2010, 3.1.2): P = Σ Re(U·I*) over all lines, P1 and Q1 from the fundamental, S = U·I, S1 = U1·I1,
 * DI = U1·IH, DV = UH·I1, SH = UH·IH with UH² = U² − U1² and IH² = I² − I1².
 * @param fundamental line of the fundamental
 */
export function phasePower(u: Oscillation, i: Oscillation, fundamental: number): PowerTerms {
  const u1 = line(u.spectrum, fundamental);
  const i1 = line(i.spectrum, fundamental);
  const s1 = magnitudeOf(u1) * magnitudeOf(i1);
  return {
    p: activePower(u.spectrum, i.spectrum),
    ...fundamentalPower(u1, i1),
    s1,
    ...products(u.rms, magnitudeOf(u1), i.rms, magnitudeOf(i1)),
  };
}

/**
 * Three phases (IEEE 1459-2010, 3.2.2 and 3.2.3): P and Q1 are sums over the phases. S is the effective Se = 3·Ue·Ie with
 * Ue² = (3·ΣUa² + ΣUab²)/18 and Ie² = (ΣIa² + In²)/3; DI, DV and SH are made of Ue1, UeH, Ie1 and IeH likewise. P1 and S1
 * are those of the positive sequence, so that their quotient is the standard's displacement factor. Without a neutral
 * the voltages are taken against the centre of the phases; then ΣUa = 0 and Ue² is the standard's ΣUab²/9.
 * @param neutral the current of the neutral; undefined in a three-wire system
 */
export function systemPower(
  voltages: Three<Oscillation>,
  currents: Three<Oscillation>,
  neutral: Oscillation | undefined,
  fundamental: number,
): PowerTerms {
  const u1 = voltages.map((u) => line(u.spectrum, fundamental)) as unknown as Three<Phasor>;
  const i1 = currents.map((i) => line(i.spectrum, fundamental)) as unknown as Three<Phasor>;
  // ΣUab² = 3·ΣUa² − |ΣUa|², whence Ue² = ΣUa²/3 − |ΣUa|²/18.
  const ue = Math.sqrt(squares(voltages) / 3 - squareOfSum(voltages) / 18);
  const ue1 = Math.sqrt(phasorSquares(u1) / 3 - magnitudeOf(sumOf(u1)) ** 2 / 18);
  const ie = Math.sqrt((squares(currents) + (neutral?.rms ?? 0) ** 2) / 3);
  const neutral1 = neutral === undefined ? 0 : magnitudeOf(line(neutral.spectrum, fundamental));
  const ie1 = Math.sqrt((phasorSquares(i1) + neutral1 ** 2) / 3);
  const effective = products(ue, ue1, ie, ie1);

  const up = symmetricalComponents(...u1).positive;
  const ip = symmetricalComponents(...i1).positive;
  return {
    p: sum(voltages.map((u, n) => activePower(u.spectrum, (currents[n] as Oscillation).spectrum))),
    p1: 3 * fundamentalPower(up, ip).p1,
    q1: sum(u1.map((u, n) => fundamentalPower(u, i1[n] as Phasor).q1)),
    s: 3 * effective.s,
    s1: 3 * magnitudeOf(up) * magnitudeOf(ip),
    di: 3 * effective.di,
    dv: 3 * effective.dv,
    sh: 3 * effective.sh,
  };
}

/** Weighted sum of oscillations that were measured at the same time. */
export function combine(parts: readonly (readonly [weight: number, part: Oscillation])[]): Oscillation {
  const spectrum = new Float64Array(parts[0]?.[1].spectrum.length ?? 0);
  for (const [weight, part] of parts) {
    for (let k = 0; k < spectrum.length; k++) {
      spectrum[k] = (spectrum[k] as number) + weight * (part.spectrum[k] as number);
    }
  }
  return { rms: Math.sqrt(activePower(spectrum, spectrum)), spectrum };
}

/** Σ Re(U·I*) over the lines that both have. */
function activePower(u: Float64Array, i: Float64Array): number {
  let total = 0;
  for (let k = 0; k < u.length; k++) {
    const product = (u[k] as number) * (i[k] as number);
    // Lines beyond the recorder's band have no value.
    if (Number.isNaN(product) && k > 0) break;
    total += product;
  }
  return total;
}

function fundamentalPower(u: Phasor, i: Phasor): { readonly p1: number; readonly q1: number } {
  return { p1: u.re * i.re + u.im * i.im, q1: u.im * i.re - u.re * i.im };
}

function products(u: number, u1: number, i: number, i1: number): Pick<PowerTerms, "s" | "di" | "dv" | "sh"> {
  const uh = Math.sqrt(Math.max(0, u * u - u1 * u1));
  const ih = Math.sqrt(Math.max(0, i * i - i1 * i1));
  return { s: u * i, di: u1 * ih, dv: uh * i1, sh: uh * ih };
}

function squares(of: Three<Oscillation>): number {
  return sum(of.map(({ rms }) => rms * rms));
}

function squareOfSum(of: Three<Oscillation>): number {
  return combine(of.map((o) => [1, o] as const)).rms ** 2;
}

function phasorSquares(of: Three<Phasor>): number {
  return sum(of.map((p) => magnitudeOf(p) ** 2));
}

function sumOf([a, b, c]: Three<Phasor>): Phasor {
  return { re: a.re + b.re + c.re, im: a.im + b.im + c.im };
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
