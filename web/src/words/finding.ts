// How a finding of the guard rails is set, wherever it stands.
export const findingWords = {
  severities: { stops: 'Stop', warns: 'Take care', notes: 'Note' } as Record<string, string>,
  mayAnswer: {
    coach: 'A coach may answer for this one, by name and with a reason that is kept.',
    nobody: 'Nobody can set this one aside.',
  } as Record<string, string>,
};
