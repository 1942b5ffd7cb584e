import type { Phase } from "../../recording/quantity.js";
import { type Sentence, say } from "../../sentence.js";
import type { Designation } from "./channel-names.js";

type Conductors = Extract<Designation, { kind: "conductors" }>;

/** Letters that name the three phases. Common practice, no source. */
const LETTERS = ["ABC", "RST", "RYB"] as const;
const PAIRS: Readonly<Record<string, Phase>> = { "12": "L12", "23": "L23", "31": "L31" };

/** How one file names its phases: B is the second phase beside A and C, the third beside R and Y. */
export class ConductorNames {
  readonly #letters: string;
  readonly #digitTriples: ReadonlySet<string>;

  /** @param designations all that voltage and current channels of the file say, with the quantity of each channel */
  constructor(
    designations: readonly { readonly said: Conductors; readonly quantity: string; readonly own: boolean }[],
  ) {
    const used = new Set(designations.flatMap(({ said }) => [said.first, said.second ?? ""]));
    const count = (letters: string) => [...letters].filter((letter) => used.has(letter)).length;
    this.#letters = LETTERS.reduce((best, letters) => (count(letters) > count(best) ? letters : best));
    const digits = designations.filter(({ said, own }) => /^\d$/.test(said.first) && !own);
    const key = ({ said, quantity }: (typeof digits)[number]) => `${quantity}${said.first}${said.second ?? ""}`;
    const keys = new Set(digits.map(key));
    const triples = ["voltage", "current"].flatMap((quantity) =>
      [
        ["1", "2", "3"],
        ["12", "23", "31"],
        ["12", "23", "13"],
      ].map((triple) => triple.map((t) => quantity + t)),
    );
    this.#digitTriples = new Set(triples.filter((triple) => triple.every((t) => keys.has(t))).flat());
  }

  /**
   * The phase that a designation means; `reversed` for a pair measured the other way round. A text says why it cannot
   * be told.
   * @param own the phase field itself says it, so that a single digit needs no company
   */
  phase(said: Conductors, quantity: string, own: boolean): { phase: Phase; reversed: boolean } | Sentence {
    const { first, second } = said;
    if (first === "N") return { phase: "N", reversed: false };
    if (/^\d$/.test(first) && !own && !this.#digitTriples.has(`${quantity}${first}${second ?? ""}`)) {
      return say`"${first}${second ?? ""}" may be a phase, a number or a symmetrical component`;
    }
    const [one, two] = [this.#number(first), second === undefined ? undefined : this.#number(second)];
    if (one === 0 || two === 0)
      return say`"${one === 0 ? first : (second ?? "")}" is none of the phases ${[...this.#letters].join(", ")}`;
    if (two === undefined) return { phase: `L${one as 1 | 2 | 3}`, reversed: false };
    const pair = PAIRS[`${one}${two}`];
    return pair !== undefined
      ? { phase: pair, reversed: false }
      : { phase: PAIRS[`${two}${one}`] as Phase, reversed: true };
  }

  #number(conductor: string): number {
    const digit = conductor.replace("L", "");
    return /^\d$/.test(digit) ? Number(digit) : this.#letters.indexOf(digit) + 1;
  }
}
