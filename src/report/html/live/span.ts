/// <reference lib="dom" />
import type { ChartWords } from "../../wording-page.js";

/** A chart whose time axis is zoomed and moved. */
export interface SpanOptions {
  readonly figure: HTMLElement;
  /** The element that takes pointer and keys; the controls are put after it. */
  readonly host: HTMLElement;
  /** Start and end of the recording in milliseconds. */
  readonly extent: readonly [number, number];
  /** Milliseconds below which there is nothing more to see. */
  readonly shortest: number;
  timeAt(event: MouseEvent): number;
  /** null: the whole recording. */
  showSpan(span: readonly [number, number] | null): void;
  readonly words: ChartWords;
}

/** Zoom and pan of a time axis by wheel, drag, keys and buttons. */
export function addSpan({ figure, host, extent, shortest, timeAt, showSpan, words }: SpanOptions): void {
  let span: readonly [number, number] = extent;
  const show = (from: number, length: number) => {
    const whole = extent[1] - extent[0];
    const size = Math.min(whole, Math.max(Math.min(shortest, whole), length));
    const start = Math.min(Math.max(from, extent[0]), extent[1] - size);
    span = [start, start + size];
    figure.dataset.span = span.join(" ");
    showSpan(size === whole ? null : span);
  };
  const zoom = (factor: number, around = (span[0] + span[1]) / 2) =>
    show(around - (around - span[0]) * factor, (span[1] - span[0]) * factor);
  const pan = (share: number) => show(span[0] + (span[1] - span[0]) * share, span[1] - span[0]);
  const reset = () => show(extent[0], extent[1] - extent[0]);

  const keys: Record<string, () => void> = {
    "+": () => zoom(0.5),
    "=": () => zoom(0.5),
    "-": () => zoom(2),
    ArrowLeft: () => pan(-0.25),
    ArrowRight: () => pan(0.25),
    "0": reset,
    Escape: reset,
  };
  host.addEventListener("keydown", (event) => {
    const action = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
    if (action === undefined) return;
    event.preventDefault();
    action();
  });
  host.addEventListener(
    "wheel",
    (event) => {
      if (!event.ctrlKey && document.activeElement !== host) return;
      event.preventDefault();
      zoom(event.deltaY < 0 ? 0.7 : 1 / 0.7, timeAt(event));
    },
    { passive: false },
  );
  let grip: number | undefined;
  host.addEventListener("pointerdown", (event) => {
    grip = timeAt(event);
    host.setPointerCapture(event.pointerId);
  });
  host.addEventListener("pointermove", (event) => {
    if (grip !== undefined && event.buttons !== 0) show(span[0] + grip - timeAt(event), span[1] - span[0]);
  });
  for (const end of ["pointerup", "pointercancel"])
    host.addEventListener(end, () => {
      grip = undefined;
    });

  const controls = document.createElement("div");
  controls.className = "controls";
  for (const [text, action] of [
    [words.zoomIn, () => zoom(0.5)],
    [words.zoomOut, () => zoom(2)],
    [words.earlier, () => pan(-0.5)],
    [words.later, () => pan(0.5)],
    [words.reset, reset],
  ] as const) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", action);
    controls.append(button);
  }
  const hint = document.createElement("span");
  hint.textContent = words.hint;
  controls.append(hint);
  host.after(controls);
  host.tabIndex = 0;
}
