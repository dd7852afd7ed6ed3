import type { IncomingMessage, ServerResponse } from 'node:http';

import validation from '@learninglocker/xapi-validation';

export interface Statement {
  id: string;
  actor: { account: { name: string } };
  verb: { id: string };
  object: { id: string };
  result?: { completion?: boolean; success?: boolean; duration?: string; score?: { scaled: number } };
  context: { registration: string; contextActivities: { category?: { id: string }[] } };
}

/** Faults of a statement by the xAPI specification, as a conformance-tested library finds them; empty for a good one. */
export function statementFaults(statement: unknown): string[] {
  const wrapped = validation as unknown as { default?: typeof validation };
  return (wrapped.default ?? validation)(statement).map((fault) => JSON.stringify(fault));
}

export const verbOf = ({ verb }: Statement): string => verb.id.split('/').at(-1) ?? '';

export interface LaunchData {
  launchMode?: 'Normal' | 'Browse' | 'Review';
  masteryScore?: number;
}

/**
 * A learning record store in small: what cmi5 (Quartz, sections 8 and 10) has a platform answer. It notes what is said
 * and keeps the states it is given.
 */
export class RecordStore {
  readonly said: Statement[] = [];
  readonly states = new Map<string, string>();

  /** What the platform decides before a launch. */
  launch(data: LaunchData = {}): void {
    const contextTemplate = {
      contextActivities: {},
      extensions: { 'https://w3id.org/xapi/cmi5/context/extensions/sessionid': 's1' },
    };
    this.states.set(
      'LMS.LaunchData',
      JSON.stringify({ contextTemplate, launchMode: 'Normal', moveOn: 'CompletedOrPassed', ...data }),
    );
  }

  /** @returns false where the address is none of the store's */
  answer(request: IncomingMessage, body: string, response: ServerResponse): boolean {
    const url = new URL(request.url ?? '/', 'http://x');
    const json = (text: string, status = 200): true => {
      response.writeHead(status, { 'content-type': 'application/json' }).end(text);
      return true;
    };
    const state = url.searchParams.get('stateId') ?? '';
    if (url.pathname === '/fetch') return json('{"auth-token":"YTpi"}');
    if (!url.pathname.startsWith('/xapi/')) return false;
    if (url.pathname === '/xapi/statements') {
      const statements = [JSON.parse(body)].flat() as Statement[];
      this.said.push(...statements);
      return json(JSON.stringify(statements.map(({ id }) => id)));
    }
    if (url.pathname !== '/xapi/activities/state') return json('{}');
    if (request.method !== 'GET') {
      this.states.set(state, body);
      return json('', 204);
    }
    const found = this.states.get(state);
    return found === undefined ? json('', 404) : json(found);
  }
}

/** A request's body, whole. */
export const bodyOf = async (request: IncomingMessage): Promise<string> => {
  let body = '';
  for await (const piece of request) body += String(piece);
  return body;
};
