/** English headings and prose of the report page. */

export const DANGER_WORDS = {
  title: "Danger",
  cautions: [
    "Keep away from live parts and do not open panels or terminals.",
    "Call the network operator or a licensed electrician at once.",
    "Local codes and the rules of safe work apply before anything written here.",
  ],
} as const;
