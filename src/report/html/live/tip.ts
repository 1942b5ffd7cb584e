/// <reference lib="dom" />

export interface Tip {
  show(lines: readonly string[], event: MouseEvent): void;
  hide(): void;
}

/** The page's one tooltip: lines of text beside the pointer, kept inside the window. */
export function makeTip(): Tip {
  const box = document.createElement("div");
  box.className = "tip";
  box.hidden = true;
  document.body.append(box);
  return {
    show: (lines, event) => {
      box.replaceChildren(
        ...lines.map((text) => {
          const line = document.createElement("div");
          line.textContent = text;
          return line;
        }),
      );
      box.hidden = false;
      const { clientWidth, clientHeight } = document.documentElement;
      box.style.left = `${Math.max(4, Math.min(event.clientX + 14, clientWidth - box.offsetWidth - 4))}px`;
      box.style.top = `${Math.max(4, Math.min(event.clientY + 14, clientHeight - box.offsetHeight - 4))}px`;
    },
    hide: () => {
      box.hidden = true;
    },
  };
}
