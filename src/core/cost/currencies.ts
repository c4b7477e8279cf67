/** Currencies by their codes of ISO 4217, with the decimals that an amount of each is paid in (its minor units). */

/** ISO 4217, list of current currencies; from memory. What stands in neither of the others has two decimals. */
const DECIMALS: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
  2: `AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP
    CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS
    KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD
    PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP
    TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD XCG YER ZAR ZMW ZWG`,
};

export interface Currency {
  readonly code: string;
  /** Decimals of an amount that can be paid. */
  readonly places: number;
}

const CURRENCIES: ReadonlyMap<string, Currency> = new Map(
  Object.entries(DECIMALS).flatMap(([places, codes]) =>
    codes.split(/\s+/).map((code) => [code, { code, places: Number(places) }] as const),
  ),
);

export const CURRENCY_CODES: readonly string[] = [...CURRENCIES.keys()];

/** Undefined: no such code. */
export function currencyOf(code: string): Currency | undefined {
  return CURRENCIES.get(code);
}
