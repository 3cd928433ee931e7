/** The day on which a sheet is issued, as its title block says it. */

/** "2026-03-07", of the clock and calendar of whoever prints. */
export function dayOf(now: Date): string {
  const [year, month, day] = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
