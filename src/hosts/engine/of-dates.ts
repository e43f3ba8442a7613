import { isFunction, type Token } from "@borgar/fx";

/** Functions whose answer hangs on the day from which dates are counted. */
const functions: ReadonlySet<string> = new Set(
  `ACCRINT ACCRINTM AMORDEGRC AMORLINC COUPDAYBS COUPDAYS COUPDAYSNC COUPNCD COUPNUM COUPPCD DATE DATEDIF DATEVALUE DAY DAYS360 DISC
  DURATION EDATE EOMONTH INTRATE ISOWEEKNUM MDURATION MONTH NETWORKDAYS NETWORKDAYS.INTL NOW ODDFPRICE ODDFYIELD ODDLPRICE ODDLYIELD
  PRICE PRICEDISC PRICEMAT RECEIVED TBILLEQ TBILLPRICE TBILLYIELD TEXT TODAY VALUE WEEKDAY WEEKNUM WORKDAY WORKDAY.INTL YEAR YEARFRAC
  YIELD YIELDDISC YIELDMAT`.split(/\s+/),
);

/** "2023-03-15", "3/15/23", "15 Mar 2023", also behind the sign of a condition: what arithmetic makes a day of. */
const dateText = /^"[<>=]*\s*(\d{1,4}[-/.]\d{1,2}([-/.]\d{1,4})?|\d{1,2}[- ][a-z]{3,9}\b|[a-z]{3,9}[- ]\d{1,2}\b)/i;

/** Whether a part of a formula reckons with dates. */
export const isOfDates = (token: Token): boolean =>
  isFunction(token) ? functions.has(token.value.toUpperCase()) : token.type === "string" && dateText.test(token.value);
