// What the page of the next session hands to its parts.
import type { Answer } from '../../api/ask';

export type Next = Answer<'/api/plan_next_session', 'get'>;
export type Line = Next['lines'][number];

export const oneSided = (line: Line) => line.dose.endsWith('a side');
