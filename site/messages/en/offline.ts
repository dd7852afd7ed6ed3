export const offlineWords = {
  offline: 'You are offline. Everything here works all the same, and what you do is kept on this device.',
  ready: 'It is all on this device now and works without a network.',
  update: 'A new edition of this manual is ready. What you have kept stays.',
  updateNow: 'Use it now',
  replaced: 'A new edition has taken over from another tab. Load this page again before you go on.',
  reload: 'Load again',
} as const;
