/** An amount in the smallest unit of a currency, as the locale writes it; with the code where the browser knows no sign. */
export function moneyIn(locale: string): (minor: number, currency: string) => string {
  return (minor, currency) => {
    try {
      const form = new Intl.NumberFormat(locale, { style: 'currency', currency });
      return form.format(minor / 10 ** (form.resolvedOptions().maximumFractionDigits ?? 2));
    } catch {
      return `${new Intl.NumberFormat(locale).format(minor / 100)} ${currency}`;
    }
  };
}
