// The files of a drop, folders opened: each with the path it lay under, for the folder often names the thrower or day.
export interface FoundFile {
  file: File;
  path: string;
}

const taken = /\.(csv|txt|tsv|dat|asc|c3d)$/i;
const hidden = /(^|\/)[.~]/;

// Splits what was dropped into force files, sorted as a person counts (2 before 10), and the number of all others.
export function forceFiles(found: FoundFile[]): { files: FoundFile[]; others: number } {
  const seen = found.filter((each) => !hidden.test(each.path));
  const files = seen.filter((each) => taken.test(each.path));
  files.sort((a, b) => a.path.localeCompare(b.path, 'en', { numeric: true }));
  return { files, others: seen.length - files.length };
}

export function chosenFiles(list: Iterable<File>): FoundFile[] {
  return [...list].map((file) => ({ file, path: file.webkitRelativePath || file.name }));
}

export async function droppedFiles(transfer: DataTransfer): Promise<FoundFile[]> {
  // Both have to be read before anything is waited for: the list is empty afterwards.
  const entries = [...transfer.items].filter((item) => item.kind === 'file').map((item) => item.webkitGetAsEntry?.() ?? null);
  const plain = [...transfer.files];
  if (!entries.length || entries.includes(null)) return chosenFiles(plain);
  const found = await Promise.all(entries.map((entry) => filesUnder(entry as FileSystemEntry)));
  return found.flat();
}

async function filesUnder(entry: FileSystemEntry): Promise<FoundFile[]> {
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject)).catch(() => null);
    return file ? [{ file, path: entry.fullPath.replace(/^\//, '') }] : [];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: FoundFile[] = [];
  for (;;) {
    // A reader gives a hundred entries at a time, and none when it has given all.
    const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject)).catch(() => []);
    if (!some.length) return found;
    for (const each of some) found.push(...(await filesUnder(each)));
  }
}
