// What a line must know beside its block: read once by the page, handed down.
import type { Answer, Refusal } from '../../api/ask';

export type Block = Answer<'/api/block', 'get'>;
export type Session = Block['sessions'][number];
export type Line = Session['lines'][number];
export type Reach = NonNullable<Block['reach']>;
export type Exercise = Answer<'/api/catalogue', 'get'>['exercises'][number];
export type Changed = Answer<'/api/adjust_block', 'post'>;

export interface Around {
  exercises: Exercise[]; // of the catalogue; empty while it is not read
  means: Record<string, string>; // by exercise: ball, body, dumbbell_pair ... as the catalogue says
  today: string; // by the server; '' while it has not answered
  speedUnit: string; // the facility's
}

// The coach's own word on a line.
export interface OwnWord {
  step: 'hold' | 'leave_out' | 'swap' | 'undo';
  exercise?: string;
  with?: string;
  session?: number;
  sets?: number;
}

// What a line needs to be changed by hand.
export interface Hand {
  before: Block | undefined; // as it was before the last change; none while its note is put away
  busy: boolean;
  change: (word: OwnWord) => Promise<Refusal | undefined>;
}
