/** Where facts come from, each written once. */
export const SOURCES = {
  practice: 'common practice, no source',
  model: 'own model, explained in the documentation of the core',
  lockstitch: 'Lockstitch 301 geometry, C = 2 + 2TS (textilecalculation.blogspot.com, 2015)',
  hamilton: 'Largest remainder method with the Hare quota',
  propagation: 'Propagation of uncertainty, root sum of squares',
  crib: '16 CFR 1508.3 (now 1219): full-size crib interior 28 by 52 3/8 in',
  sleep:
    'American Academy of Pediatrics, Pediatrics 2022;150(1):e2022057990 (from memory); US CPSC and CDC say the same',
  dryer: 'US Fire Administration, Topical Report 13(7): clothes dryer fires, 2008 to 2010',
  tools: 'NIOSH and Cal/OSHA, Easy Ergonomics, DHHS 2004-164',
  flammability: '16 CFR 1610.4 (clothing textiles; raised surfaces are classed apart)',
  children: 'US CPSC, children’s product certificate and tracking label; EU Regulation 2023/988',
  labels: '16 CFR 303.22 (fibre content) and 16 CFR 423.3 (care labels cover apparel)',
  drum: 'Cotton load of 1 kg for each 10 L of drum, the cautious rule of household tests',
  spin: 'EU spin classes, residual water of cotton: B 45 to 54 %',
  needles: 'Metric needle size: blade diameter in hundredths of a millimetre (from memory)',
  plainCotton:
    'modacrylic-xf.com (trade page): plain cotton cloth shrinks 6 % along and 2.5 % across, twill 4 and 3 %; range common practice',
  flannelWashed:
    'quilttoit.com, 2017-11-05 (home measurement): two flannels shrank 4.9 and 3.9 % along, 2.2 and 0.3 % across at the first wash; range common practice',
  fivePercent: 'fibre2fashion.com industry article 5988: 5 % at the first wash, 7 % when stable',
  bedsUs:
    'US trade sizes of mattresses as trade pages print them (liquisearch.com, bed size); for twin they disagree, 38 or 39 in',
  bedsUk: 'UK trade sizes of mattresses (from memory)',
  bedsEu: 'EU trade sizes of mattresses (from memory)',
  king: "Like prints that touch not even at corners: at most ceil(n/2) ceil(m/2) cells; the king's graph needs four colours",
  minorUnits: 'ISO 4217 list one, published 2024-06-25 (by way of npm currency-codes 2.2.0)',
  fibres:
    '16 CFR 303: fibres by weight, largest first (from memory), under 5 percent as other fibre (303.3), filling apart (303.22); thread left out, 15 USC 70j',
} as const;
