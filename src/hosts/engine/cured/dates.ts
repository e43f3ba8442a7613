import { ErrorType, ErrorValueObject, NumberValueObject } from "@univerjs/engine-formula";
import { asNumber, eachCell, firstOf, spread } from "./cells";
import { engineFunction, type Result, type Value, withAnswer } from "./engine-function";

const DAY = 86_400_000;
/** Day 25 569 of a spreadsheet is 1 January 1970. */
const EPOCH = 25_569;
/** 29 February 1900 is no day, but a spreadsheet counts it: from day 61 on the count is the calendar's. */
const FIRST_TRUE_DAY = 61;
/** 31 December 9999. */
const LAST_DAY = 2_958_465;

const dateOf = (serial: number): Date => new Date((serial + (serial < FIRST_TRUE_DAY ? 1 : 0) - EPOCH) * DAY);
const serialOf = (year: number, month: number, day: number): number => {
  const serial = Date.UTC(year, month, day) / DAY + EPOCH;
  return serial < FIRST_TRUE_DAY ? serial - 1 : serial;
};

/** The whole day of a date; undefined when there is no such day. */
const dayOf = (value: Value): number | undefined => {
  const serial = Math.floor(Number(value.getValue()));
  return serial >= 0 && serial <= LAST_DAY ? serial : undefined;
};

const noDay = () => ErrorValueObject.create(ErrorType.NUM);

/** EDATE stays in the month it comes to: 30 August and 30 months more is 28 February. The engine goes on into March. */
export class Edate extends engineFunction("EDATE") {
  override calculate(start: Value, months: Value): Result {
    return spread([start, months], (...cells) => {
      if (cells.some((cell) => cell.isBoolean())) return ErrorValueObject.create(ErrorType.VALUE);
      const [from, by] = cells.map(asNumber) as [Value, Value];
      if (from.isError()) return from;
      if (by.isError()) return by;
      const day = dayOf(from);
      if (day === undefined) return noDay();
      const date = dateOf(day);
      const [year, month] = [date.getUTCFullYear(), date.getUTCMonth() + Math.trunc(Number(by.getValue()))];
      const last = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
      const serial = serialOf(year, month, Math.min(date.getUTCDate(), last));
      return serial >= 0 && serial <= LAST_DAY ? NumberValueObject.create(serial, "yyyy-mm-dd") : noDay();
    });
  }
}

/** Before 1900 there are no days; the engine counts on below zero. */
export const Eomonth = withAnswer("EOMONTH", (answer) =>
  eachCell(answer, (cell) => (cell.isNumber() && Number(cell.getValue()) < 0 ? noDay() : cell)),
);

/** The week of ISO 8601: it starts on Monday and belongs to the year of its Thursday. The engine counts some years a week short. */
const isoWeek = (day: number): number => {
  const thursday = day - ((day + 5) % 7) + 3;
  const year = dateOf(thursday).getUTCFullYear();
  return Math.floor((thursday - serialOf(year, 0, 1)) / 7) + 1;
};

export class IsoWeek extends engineFunction("ISOWEEKNUM") {
  override calculate(date: Value): Result {
    return spread([date], (cell) => {
      const number = asNumber(cell as Value);
      if (number.isError()) return number;
      const day = dayOf(number);
      return day === undefined ? noDay() : NumberValueObject.create(isoWeek(day));
    });
  }
}

/** WEEKNUM of a day and an hour is that of the day; the engine counts Saturday afternoon to the next week. */
export class WeekNumber extends engineFunction("WEEKNUM") {
  override calculate(date: Value, kind?: Value): Result {
    const day = firstOf(date).isNumber() ? dayOf(firstOf(date)) : undefined;
    if (day === undefined) return super.calculate(...(kind ? [date, kind] : [date]));
    if (kind && Number(firstOf(kind).getValue()) === ISO_8601) return NumberValueObject.create(isoWeek(day));
    const whole = NumberValueObject.create(day);
    return super.calculate(...(kind ? [whole, kind] : [whole]));
  }
}

const ISO_8601 = 21;
