// The one way to the server: typed by the generated schema, and a refusal is a value, never an exception.
import createClient from 'openapi-fetch';
import { rememberWhose, tellsWhose } from '../outbox/whose';
import { words } from '../words/words';
import type { paths } from './schema';

export const client = createClient<paths>({ baseUrl: '' });
client.use({
  async onResponse({ request, schemaPath, response }) {
    if (request.method === 'GET' && response.ok && tellsWhose(schemaPath)) rememberWhose(schemaPath, await response.clone().json());
  },
});

export interface Refusal {
  code: number;
  name: string;
  sentence: string;
  field: string;
  given: string;
  allowed: string;
}

export type Asked<T> = { answer: T; refusal?: undefined } | { answer?: undefined; refusal: Refusal };

const unreachable: Refusal = {
  code: 0,
  name: 'unreachable',
  sentence: words.unreachable,
  field: '',
  given: '',
  allowed: '',
};

// Turns openapi-fetch's {data, error} into an answer or a refusal: await ask(client.GET('/api/roster'))
export async function ask<T>(call: Promise<{ data?: T; error?: unknown }>): Promise<Asked<T>> {
  try {
    const { data, error } = await call;
    if (data !== undefined) return { answer: data };
    const refusal = (error as { refusal?: Refusal } | undefined)?.refusal;
    return { refusal: refusal ?? unreachable };
  } catch {
    return { refusal: unreachable };
  }
}

export type Answer<Path extends keyof paths, Verb extends keyof paths[Path]> = paths[Path][Verb] extends {
  responses: { 200: { content: { 'application/json': infer Body } } };
}
  ? Body
  : never;
