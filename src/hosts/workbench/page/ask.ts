/** Asks a question that has to be answered before anything else is done; true when the deed is wanted. Esc keeps things as they are. */
export const ask = (question: string, deed: string): Promise<boolean> => {
  const dialog = document.createElement("dialog");
  dialog.className = "shop-question";
  const words = document.createElement("p");
  words.className = "shop-question-words";
  words.id = "question";
  words.textContent = question;
  dialog.setAttribute("aria-labelledby", words.id);
  const answers = document.createElement("div");
  answers.className = "shop-tools";
  // The harmless answer first: it has the keyboard when the question opens.
  answers.append(answer("Keep it", "", dialog), answer(deed, "yes", dialog));
  dialog.append(words, answers);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue === "yes");
    }),
  );
};

const answer = (text: string, value: string, dialog: HTMLDialogElement): HTMLButtonElement => {
  const button = document.createElement("button");
  button.type = "button";
  button.className = value ? "shop-button shop-button-deed" : "shop-button";
  button.textContent = text;
  button.addEventListener("click", () => dialog.close(value));
  return button;
};
