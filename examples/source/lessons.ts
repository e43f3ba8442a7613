import type { Book } from "../../src/hosts/engine/book";
import { lessons as lessonSheets } from "../../src/hosts/pane/sheets/lessons";
import { page } from "./page";

const readMe = page("Read me", [
  "Eight lessons in cells",
  "For whoever teaches the bench, or learns it alone. Each sheet asks a question, answers it with formulas, says what the answer means, tells what to change and what to look for, and at its foot explains one answer step by step, with its sources and cautions.",
  "Yellow cells are yours to change. Green headings are typed, sand-coloured headings are answered by formulas. What you change can be undone; a fresh copy of a lesson comes from the pane, under Sheets.",
  "To teach with it: read the question aloud, let everybody guess before a cell is changed, then change it. The lines that begin with Ask first are meant for that. The lessons stand alone; the order is that in which they are easiest.",
  "1 Two mechanisms: strip and magnet. 2 Why 1.13 and 1.45: what a standard can ask. 3 The slow ramp: why turning up by hand measures the hand. 4 Hot and cold: the start of a test belongs to its result. 5 Drop and watts: what a voltmeter tells of a contact. 6 A motor start: four margins. 7 A warm panel: heat behind a door. 8 How sure are we: two meters and a limit.",
  "Fernhollow is invented, and so are its breakers, machines and readings; no number is a maker's. What a standard says is marked with how far it was followed to its page: from memory means compare it before anything is rejected by it.",
  "A result here or on any bench is not a release to service. The currents of a test source burn; a board is worked on switched off, locked out and proved dead. A lesson is no instruction to do it alone.",
]);

export const lessons: Book = { sheets: [...lessonSheets.map(({ sheet }) => sheet), readMe] };
