/** Why a request is not answered, as HTTP says it (RFC 9110) and as people read it. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}
