/** A text in lines of at most `length` characters, broken between its words; a longer word stands alone. */
export const linesOf = (text: string, length: number): string[] => {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = lines.pop() ?? "";
    if (line === "") lines.push(word);
    else if (line.length + 1 + word.length <= length) lines.push(`${line} ${word}`);
    else lines.push(line, word);
  }
  return lines;
};
