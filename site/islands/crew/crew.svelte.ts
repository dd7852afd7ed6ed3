import { onOtherTab } from '@site/storage/other-tabs.ts';

import {
  freshBook,
  freshCard,
  mergeCrew,
  MOST_CARDS,
  readCrew,
  writeCrew,
  type CrewBook,
  type CrewCard,
} from './card.ts';

const KEY = 'ridge-to-bed.crew';

/** The shop's cards, kept in this browser as they change. */
export class Crew {
  book: CrewBook = $state.raw(freshBook(''));
  open: number = $state(0);
  notice: 'kept' | 'notKept' | 'badFile' | null = $state(null);

  get card(): CrewCard {
    return this.book.cards[this.open] ?? freshCard('');
  }

  /**
   * Takes the kept cards, and from then on what another tab writes.
   * @param today the first day offered on a new card
   * @returns the function that lets go of the shelf
   */
  start(today: string): () => void {
    try {
      const kept = readCrew(localStorage.getItem(KEY) ?? '');
      this.book = kept && kept.cards.length > 0 ? kept : freshBook(today);
    } catch {
      this.book = freshBook(today); // storage is closed: the card lasts as long as the page
    }
    return onOtherTab(KEY, (text) => {
      const book = readCrew(text ?? '');
      if (book && book.cards.length > 0) this.book = book;
      this.open = Math.min(this.open, this.book.cards.length - 1);
    });
  }

  shop(shop: string): void {
    this.#keep({ ...this.book, shop });
  }
  change(how: (card: CrewCard) => CrewCard): void {
    const cards = this.book.cards.map((card, at) => (at === this.open ? how(card) : card));
    this.#keep({ ...this.book, cards });
  }
  another(today: string): void {
    if (this.book.cards.length >= MOST_CARDS) return;
    this.#keep({ ...this.book, cards: [...this.book.cards, freshCard(today)] });
    this.open = this.book.cards.length - 1;
  }
  remove(today: string): void {
    const cards = this.book.cards.toSpliced(this.open, 1);
    this.open = 0;
    this.#keep({ ...this.book, cards: cards.length === 0 ? [freshCard(today)] : cards });
  }
  bringIn(text: string): void {
    const theirs = readCrew(text);
    if (theirs) this.#keep(mergeCrew(this.book, theirs));
    else this.notice = 'badFile';
  }
  erase(today: string): void {
    this.open = 0;
    this.#keep(freshBook(today));
  }
  asFile(): string {
    return writeCrew(this.book);
  }

  #keep(book: CrewBook): void {
    this.book = book;
    try {
      localStorage.setItem(KEY, writeCrew(book));
      this.notice = 'kept';
    } catch {
      this.notice = 'notKept';
    }
  }
}
