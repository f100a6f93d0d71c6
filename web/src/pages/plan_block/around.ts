// What a set's form must know beside its block: read once by the page, handed down.
export interface Around {
  means: Record<string, string>; // by exercise: ball, body, dumbbell_pair ... as the catalogue says
  today: string; // by the server; '' while it has not answered
  speedUnit: string; // the facility's
}
