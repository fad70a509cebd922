// Days of the register, written `2026-10-05`.

/** The same day so many months later; the last of the month where that month has no such day. */
export function monthsLater(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const count = year * 12 + (month - 1) + months;
  const [laterYear, laterMonth] = [Math.floor(count / 12), count % 12];
  return [
    String(laterYear),
    String(laterMonth + 1).padStart(2, '0'),
    String(Math.min(date, daysIn(laterYear, laterMonth))).padStart(2, '0'),
  ].join('-');
}

/** `month` from 0. */
function daysIn(year: number, month: number): number {
  if (month === 1) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [3, 5, 8, 10].includes(month) ? 30 : 31;
}
