/** A dialog that takes what is typed as it goes must not be closed over a value that was refused. */

/** Puts the focus into the first field of the dialog whose value was refused; false: there is none. */
export function goneToRefused(within: HTMLElement | null): boolean {
  const field = within?.closest('dialog')?.querySelector<HTMLElement>('[aria-invalid="true"]');
  field?.focus();
  return field !== null && field !== undefined;
}
