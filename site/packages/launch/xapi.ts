import { v4 as newId } from 'uuid';

/** What a cmi5 platform puts into the address it opens (cmi5 Quartz, section 8.1). */
export interface Launch {
  /** Where statements and states are sent. */
  readonly endpoint: string;
  /** Where the pass is fetched that goes with all of them; it is given once. */
  readonly fetch: string;
  /** The learner, in the platform's words. */
  readonly actor: unknown;
  /** One learner's enrolment, over all visits. */
  readonly registration: string;
  readonly activityId: string;
}

/** Reads the launch address; null when the page was opened in another way. */
export function launchOf(search: string): Launch | null {
  const given = new URLSearchParams(search);
  const [endpoint, fetchFrom, actor, registration, activityId] = [
    'endpoint',
    'fetch',
    'actor',
    'registration',
    'activityId',
  ].map((name) => given.get(name) ?? '');
  if (!endpoint || !fetchFrom || !actor || !registration || !activityId) return null;
  try {
    return {
      endpoint: endpoint.replace(/\/$/, ''),
      fetch: fetchFrom,
      actor: JSON.parse(actor) as unknown,
      registration,
      activityId,
    };
  } catch {
    return null;
  }
}

/** What is said of the learner; who, where and when is added. */
export interface Saying {
  readonly verb: string;
  readonly result?: object;
  readonly context: object;
}

/** The platform's store of one learner's doings in this course (xAPI 1.0.3, part 3). Each call rejects when the store answers with a failure. */
export interface Store {
  /** What is kept under a name; null when nothing is. */
  kept: (stateId: string) => Promise<unknown>;
  keep: (stateId: string, value: object) => Promise<void>;
  /** What is kept of the learner beyond this course; null when nothing is. */
  profile: (profileId: string) => Promise<unknown>;
  /** @param isLast the page goes: it is sent all the same */
  say: (saying: Saying, isLast?: boolean) => Promise<void>;
}

const NOT_FOUND = 404;

async function passFrom(address: string): Promise<string> {
  const response = await fetch(address, { method: 'POST' });
  const answer = (await response.json()) as { 'auth-token'?: unknown; 'error-text'?: unknown };
  const pass = answer['auth-token'];
  if (typeof pass !== 'string') throw new Error(`The platform gave no pass: ${String(answer['error-text'])}`);
  return pass;
}

/** Opens the store of a launch (cmi5 Quartz, section 8.2). */
export async function openStore(launch: Launch): Promise<Store> {
  const { endpoint, actor, registration, activityId } = launch;
  const pass = await passFrom(launch.fetch);
  const agent = JSON.stringify(actor);
  const ask = async (path: string, options: RequestInit = {}): Promise<Response> => {
    const response = await fetch(`${endpoint}/${path}`, {
      ...options,
      headers: {
        'Content-Type': 'application/json',
        'X-Experience-API-Version': '1.0.3',
        Authorization: `Basic ${pass}`,
      },
    });
    if (!response.ok && response.status !== NOT_FOUND) throw new Error(`The platform answered ${response.status}.`);
    return response;
  };
  const read = async (path: string): Promise<unknown> => {
    const response = await ask(path);
    return response.status === NOT_FOUND ? null : ((await response.json()) as unknown);
  };
  const send = async (path: string, method: 'POST' | 'PUT', body: object, keepalive = false): Promise<void> => {
    const { status } = await ask(path, { method, keepalive, body: JSON.stringify(body) });
    if (status === NOT_FOUND) throw new Error(`The platform answered ${status}.`);
  };
  const statePath = (stateId: string): string =>
    `activities/state?${new URLSearchParams({ activityId, agent, registration, stateId }).toString()}`;
  return {
    kept: (stateId) => read(statePath(stateId)),
    keep: (stateId, value) => send(statePath(stateId), 'PUT', value),
    profile: (profileId) => read(`agents/profile?${new URLSearchParams({ agent, profileId }).toString()}`),
    say: ({ verb, result, context }, isLast) =>
      send(
        'statements',
        'POST',
        {
          id: newId(),
          actor,
          verb: { id: `http://adlnet.gov/expapi/verbs/${verb}`, display: { en: verb } },
          object: { objectType: 'Activity', id: activityId },
          ...(result && { result }),
          context: { ...context, registration },
          timestamp: new Date().toISOString(),
        },
        isLast,
      ),
  };
}
