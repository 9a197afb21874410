import type { KitMoney, KitsAnswer } from '#core/contract.ts';
import { roundTo } from '#core/length.ts';
import { sayLength } from './say-length.ts';
import type { Row, Telling } from './telling.ts';

/** How many kits the bolts give, what is in each, and what it costs. */
export function tellKits(answer: KitsAnswer): Telling {
  const { grid, cut, made, most, weight, money, cautions, input } = answer;
  const kit: readonly Row[] = [
    ['Most that can be cut', `${most}`],
    ['Blocks of a quilt', `${grid.blocks}: ${grid.columns} across, ${grid.rows} down`],
    ['Cut each block', `${sayLength(cut, input.unit)} square`],
    ['Cloth of a kit', `${roundTo(weight.dry, 1)} ${weight.unit}`],
  ];
  const groups = answer.kits.map(
    ({ count, prints }): Row => [
      `${count} ${count === 1 ? 'kit' : 'kits alike'}`,
      prints.map(({ id, blocks }) => `${blocks} of ${id}`).join(', '),
    ],
  );
  const tables = [
    { name: 'Kits', rows: kit },
    { name: 'Prints', rows: groups },
    { name: 'Money of a kit', rows: money === undefined ? [] : tellMoney(money) },
  ];
  return {
    title: `${made} ${made === 1 ? 'kit' : 'kits'} from these bolts`,
    tables: tables.filter(({ rows }) => rows.length > 0),
    cautions,
  };
}

function tellMoney({ currency, decimals, cost, price }: KitMoney): readonly Row[] {
  const say = (minor: number) => `${(minor / 10 ** decimals).toFixed(decimals)} ${currency}`;
  return [['Cost', say(cost)], ...(price === undefined ? [] : [tellPrice(say(price))])];
}

function tellPrice(price: string): Row {
  return ['Price', price];
}
