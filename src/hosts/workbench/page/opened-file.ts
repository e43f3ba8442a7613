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
    if (file) take({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
    // So that the same file can be chosen again.
    input.value = "";
  });
};
