/** What the pointer holds over the picture. */
export type Tool = 'turn' | 'comb' | 'press' | 'slide' | 'tap';
