/**
 * Every sentence of the model and the shell, in the language that is spoken. The sentence stands in English where it is
 * made and is its own key in the catalogue of another language (the way of gettext):
 *
 *     t`${player} cannot see ${other}`
 *     ngettext(msgid`${count} turn`, `${count} turns`, count)
 *
 * Only inside functions: what is said while a module is read is said before the language is known.
 */
export { t, ngettext, msgid } from 'ttag';
