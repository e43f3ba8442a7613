/** A workbook's bytes and the name it goes by. */
export interface OpenedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The workbook that the page was started with. */
export const fetchOpened = async (): Promise<OpenedFile> => {
  const response = await fetch("workbook");
  if (!response.ok) throw new Error("The workbook could not be fetched: is npm start still running?");
  const name =
    /filename\*=UTF-8''(.*)$/.exec(response.headers.get("Content-Disposition") ?? "")?.[1] ?? "workbook.xlsx";
  return { name: decodeURIComponent(name), bytes: new Uint8Array(await response.arrayBuffer()) };
};

/** A workbook from this machine's disk, by the browser's own chooser. Nothing leaves the page. */
export const onFileChosen = (button: HTMLElement, input: HTMLInputElement, take: (file: OpenedFile) => void): void => {
  button.addEventListener("click", () => input.click());
  input.addEventListener("change", async () => {
    const file = input.files?.[0];
    if (file) take(await read(file));
    // So that the same file can be chosen again.
    input.value = "";
  });
};

/** A workbook that is dropped on the page. */
export const onFileDropped = (page: HTMLElement, take: (file: OpenedFile) => void): void => {
  const isFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes("Files") ?? false;
  const mark = (isOver: boolean) => page.classList.toggle("shop-taking", isOver);
  page.addEventListener("dragover", (event) => {
    if (!isFile(event)) return;
    event.preventDefault();
    mark(true);
  });
  // Leaving the page, not one of its parts for another.
  page.addEventListener("dragleave", ({ relatedTarget }) => {
    if (!relatedTarget) mark(false);
  });
  page.addEventListener("drop", async (event) => {
    mark(false);
    const file = event.dataTransfer?.files[0];
    if (!isFile(event) || !file) return;
    event.preventDefault();
    take(await read(file));
  });
};

const read = async (file: File): Promise<OpenedFile> => ({
  name: file.name,
  bytes: new Uint8Array(await file.arrayBuffer()),
});
