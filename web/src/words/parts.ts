// What the shared parts say themselves.
export const partWords = {
  fewer: (label: string, by: number) => `${label}: ${by} fewer`,
  more: (label: string, by: number) => `${label}: ${by} more`,
};
