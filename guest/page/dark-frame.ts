import { useEffect } from 'preact/hooks';

/** As dark as the page in Nose, in `glass-page.css`. */
const darkness = '#0b0908';

/** While eyes are closed nothing shines round the page either: a browser's bars take their colour from these. */
export function useDarkFrame(dark: boolean): void {
  useEffect(() => {
    if (!dark) return;
    const bars = [...document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')];
    const were = bars.map(({ content }) => content);
    const { style } = document.documentElement;
    style.background = darkness;
    for (const bar of bars) bar.content = darkness;
    return () => {
      style.background = '';
      for (const [place, bar] of bars.entries()) bar.content = were[place] ?? '';
    };
  }, [dark]);
}
