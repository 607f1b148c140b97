/** Identities that must not be mixed, although all are strings. The only way in is the function of the same name. */
declare const identity: unique symbol;
type Identity<Of extends string> = string & { readonly [identity]: Of };

export type TastingId = Identity<'tasting'>;
export type PourId = Identity<'pour'>;
export type SeatId = Identity<'seat'>;
/** Made from what the cue is (`<pour>/writing/nose`), so that it survives a new compilation of the same plan. */
export type CueId = Identity<'cue'>;
/** Chosen by the sender; the same id again gets the same answer and no second effect. */
export type CommandId = Identity<'command'>;
export type PhotoId = Identity<'photo'>;
/** Names a device in the call to the others in it, chosen by itself. It opens nothing. */
export type PeerId = Identity<'peer'>;
/** Of whoever has evenings on this server; the first house, which every server has, goes without. */
export type HouseId = Identity<'house'>;

export const tastingId = (value: string): TastingId => value as TastingId;
export const pourId = (value: string): PourId => value as PourId;
export const seatId = (value: string): SeatId => value as SeatId;
export const cueId = (value: string): CueId => value as CueId;
export const commandId = (value: string): CommandId => value as CommandId;
export const peerId = (value: string): PeerId => value as PeerId;
export const photoId = (value: string): PhotoId => value as PhotoId;
export const houseId = (value: string): HouseId => value as HouseId;
