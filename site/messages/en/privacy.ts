/** Words of the page about what stays where. */
export const privacy = {
  title: 'What stays where',
  description:
    'Names, answers, jobs and photos stay on the device they were typed on. How that is so, and how to check it.',
  lead: 'Nothing you type, answer or photograph here leaves your device unless you carry it yourself. There is no account, no server of ours, and nothing counts your visits.',
  keptTitle: 'What is kept, and where',
  keptHead: ['What', 'Where', 'Until'],
  kept: [
    ['Units, light or dark page', 'this browser’s storage', 'you clear the browser’s data for this site'],
    [
      'Lessons done, answers to rounds, reviews due',
      'this browser’s storage and database',
      'you erase it under My record, or clear the browser’s data',
    ],
    ['The open job sheet', 'this browser’s storage', 'you start again, or clear the browser’s data'],
    [
      'A class’s rounds, names at seats, hand-ins',
      'the database of the instructor’s browser',
      'you erase the desk, or clear the browser’s data',
    ],
    [
      'Hands-on records and their photos',
      'the database of the instructor’s browser',
      'you erase the desk, or clear the browser’s data',
    ],
    ['Crew cards', 'this browser’s storage', 'you erase them, or clear the browser’s data'],
  ],
  carryTitle: 'What you carry yourself',
  carry: [
    'A link to a job or a round holds it in the part after the #. A browser keeps that part to itself and asks the server only for the page.',
    'A hand-in is a file, a line of text or a square code. It holds the learner’s name, seat and answers, and goes where the learner takes it.',
    'A saved desk or record is a file on your disk. Whoever has the file has what is in it.',
    'Inside a learning platform, the packages of this course tell that platform what it asks for: completion, score and time. What it does with them is up to those who run it.',
  ],
  photosTitle: 'Photos and the camera',
  photos:
    'A photo added to a pull is made smaller and kept in this browser only, without the place and time a camera writes into its files. Pictures from the camera are searched for a square code on the page and forgotten.',
  checkTitle: 'How to check',
  check: [
    'Open the page once, then take the device off the network. The desk, the job sheet and the rounds go on working.',
    'Open your browser’s developer tools at “Network”, and use the desk. Only this site’s own files appear, and none after they are loaded.',
    'Look at the page’s source: its content policy names this site alone as a place to load from or connect to, and allows no form to be sent to any other.',
    'The whole of the source is open: search it for a call to any other address.',
  ],
  limitsTitle: 'What it cannot do',
  limits: [
    'Someone who uses the same browser profile can see what is kept in it. On a shared computer save your file and erase the rest.',
    'A round taken at home is practice. Nothing here watches who answers, and nothing should.',
    'A browser may clear its storage when the disk is full. Save a file of what you need.',
  ],
} as const;
