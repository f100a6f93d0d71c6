// What the page asks and gets; the shapes are the server's (docs/openapi.json).
import { ask, client, type Answer, type Asked } from '../../api/ask';

export type Solved = Answer<'/api/solve_setup', 'get'>;
export type Equivalents = Answer<'/api/solve_equivalent', 'get'>;
export type ShownSetting = Solved['settings'][number];
export type ShownJoint = Solved['joints'][number];
export type ShownCause = Solved['causes'][number];
export type ShownSearch = NonNullable<Solved['search']>;

// A number that was typed wrong goes on as text, to be refused in a sentence.
export type Query = Record<string, string | number>;
export const askSetup = (query: Query): Promise<Asked<Solved>> => ask(client.GET('/api/solve_setup', { params: { query: query as never } }));
export const askEquivalents = (query: Query): Promise<Asked<Equivalents>> => ask(client.GET('/api/solve_equivalent', { params: { query: query as never } }));
