/** A file as the readers see it: handed in by cli/files.ts, so that no stage does I/O of its own. */
export interface LogFile {
  /** Name without folder. */
  readonly name: string;
  readonly size: number;
  /** At most `length` bytes from `offset`; fewer only at the end of the file. */
  read(offset: number, length: number): Promise<Uint8Array>;
}

/** Told how far a long step has come, 0…1. */
export type Progress = (step: string, share: number) => void;
