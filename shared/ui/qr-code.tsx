import { useMemo } from 'preact/hooks';
import { encode } from 'uqr';

interface QrCodeProps {
  readonly of: string;
  /** What scanning it does, for those who do not see it. */
  readonly label: string;
}

/** A QR code as one path. Always dark on white, with its quiet zone: readers want it so in every theme. */
export function QrCode({ of, label }: QrCodeProps) {
  const { size, path } = useMemo(() => drawn(of), [of]);
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shape-rendering="crispEdges"
    >
      <path class="qr-ground" d={`M0 0H${size}V${size}H0Z`} />
      <path class="qr-modules" d={path} />
    </svg>
  );
}

function drawn(text: string): { readonly size: number; readonly path: string } {
  // ISO/IEC 18004 asks for a quiet zone of four modules; level M bears a thumb print or a drop of wine.
  const { size, data } = encode(text, { ecc: 'M', border: 4 });
  const runs = data.flatMap((row, y) =>
    [
      ...row
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`),
  );
  return { size, path: runs.join('') };
}
