import { expect, it } from 'vitest';
import type { Binding } from '#model/pages/bindings/binding.ts';
import { bindingFault } from '#model/pages/bindings/fault.ts';
import { book, concertina, looseRow, pagesOf, ridgeBooklet } from '#model/pages/bindings/make.ts';

const pages = pagesOf('violin', 1, 6);
const ridge = ridgeBooklet({ leaves: 2, pagesPerPanel: 2, stackSide: 1, sides: [pages, pages] });
const row = concertina(pages, 2);

it.each([
  ['loose', looseRow(pages)],
  ['book', book(pages)],
  ['concertina', row],
  ['ridge', ridge],
])('nothing is wrong with a sound %s', (_, binding) => expect(bindingFault(binding)).toBeNull());

const faults: readonly (readonly [string, Binding, string])[] = [
  ['half a leaf', { ...ridge, leaves: 1.5 }, 'leaves'],
  ['no page', { ...ridge, pagesPerPanel: 0 }, 'pages a panel'],
  ['loose pages with leaves', { ...looseRow(pages), leaves: 1 }, 'no leaves to turn'],
  ['a book of wide panels', { ...book(pages), pagesPerPanel: 2 }, 'a panel of its own'],
  ['a concertina of one', { ...row, pagesPerPanel: 1 }, 'at least two'],
  ['a second side of a book', { ...book(pages), stackSide: 1 }, 'one side'],
  ['a missing side', { ...ridge, views: ridge.views.slice(1) }, '2 sides, not 1'],
  ['a missing state', { ...ridge, leaves: 3 }, 'there are 4 states'],
  ['a missing place', { ...ridge, pagesPerPanel: 3 }, 'it has 3 places'],
  [
    'a torn concertina',
    { ...concertina(pages, 4), views: [[pages.slice(0, 4), pages.slice(1, 5)]] },
    'hang together',
  ],
];

it.each(faults)('%s is refused', (_, binding, words) => expect(bindingFault(binding)).toContain(words));

it('more pages than a ridge booklet has places for are a mistake of the caller', () => {
  expect(() => ridgeBooklet({ leaves: 1, pagesPerPanel: 2, stackSide: 0, sides: [pages, []] })).toThrow(
    'that many',
  );
});
