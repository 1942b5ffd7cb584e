/**
 * The spans that dips, swells and interruptions cover, on the sample axis (IEC 61000-4-30, flagging). Detectors mark
 * them half cycle by half cycle as they see them, so that a window finds its flag when it closes.
 */
export class FlaggedSpans {
  private readonly from: number[] = [];
  private readonly to: number[] = [];

  /** @param from not before the `from` of any earlier call, except where that span overlaps this one */
  mark(from: number, to: number): void {
    const last = this.to.length - 1;
    if (last >= 0 && from <= (this.to[last] as number)) {
      this.from[last] = Math.min(this.from[last] as number, from);
      this.to[last] = Math.max(this.to[last] as number, to);
      return;
    }
    this.from.push(from);
    this.to.push(to);
  }

  /** Whether any marked span reaches into from … to. */
  touches(from: number, to: number): boolean {
    let low = 0;
    let high = this.to.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.to[middle] as number) <= from) low = middle + 1;
      else high = middle;
    }
    return low < this.from.length && (this.from[low] as number) < to;
  }
}
