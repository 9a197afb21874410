import type { LayerPull, Role, SwatchNote } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { WashWords } from './source.ts';

const count = makeCount('es');

const few: Readonly<Record<number, string>> = { 1: 'un lavado', 2: 'dos lavados' };
const times = (washes: number) => few[washes] ?? count(washes, 'lavado', 'lavados');
const along = { length: 'A lo largo', width: 'A lo ancho' } as const;
const layers: Readonly<Record<Role, string>> = {
  top: 'La delantera',
  middle: 'El relleno',
  backing: 'La trasera',
};

const cures: Readonly<Record<Role, string>> = {
  top: 'prelava la tela de la delantera',
  middle: 'elige otro relleno o lava un bloque de prueba',
  backing: 'prelava la tela de la trasera',
};

const notes: Readonly<Record<SwatchNote, string>> = {
  'one-specimen':
    'Un solo par de marcas: no se sabe nada de cuánto varía. Una segunda muestra lo diría.',
  'coarse-reading':
    'El cambio es tan pequeño que la regla lo desdibuja. Separa más las marcas o lee con una escala más fina.',
  'grew-back':
    'Ha encogido menos que tras menos lavados. La tela rara vez lo hace; vale la pena medir otra vez.',
};

const pulls: Readonly<Record<LayerPull['says'], string>> = {
  tight: 'tira: quiere encoger más de lo que la colcha deja.',
  even: 'queda lisa.',
  puckers: 'se arrugará: la colcha encoge más que esa capa por sí sola.',
};

/** Lo que dice la página del lavado además de lo que dicen todos los elementos, en español. */
export const es: WashWords = {
  language: 'es',
  along,
  times,
  swatches: {
    title: 'Muestras',
    example: 'Estas muestras son de una tienda que no existe. Escribe encima, o',
    clear: 'empieza con una tabla vacía',
    cloth: 'Tela',
    own: 'Un nombre mío',
    ownName: 'Su nombre',
    sandwich: 'Un bloque de prueba acolchado',
    washed: 'Lavados',
    before: 'Antes',
    after: 'Luego',
    row: (index) => `Muestra ${index}`,
    cell: (index, way, end) =>
      `Muestra ${index}, ${along[way].toLowerCase()}, ${end.toLowerCase()}`,
    fault: (way, end) => `${along[way]}, ${end.toLowerCase()}`,
    diagonals: 'Diagonales, para la deformación',
    diagonal: (index, name) => `Muestra ${index}, diagonal ${name}`,
    explainDiagonals:
      'Después del lavado, de esquina a esquina del cuadrado: de A a C y luego de B a D.',
    waits: 'Un par con una sola cifra espera la otra.',
    add: 'Añadir una tela',
    remove: (name) => `Quitar ${name}`,
    unused: 'Ninguna capa de la colcha es de esta tela: se mide, y la colcha se queda como está.',
  },
  ruler: {
    shrinks: 'encoge',
    grows: 'crece',
    mean: (low, high) => `La media está entre ${low} y ${high};`,
    next: (low, high, sure) =>
      `una pieza nueva, entre ${low} y ${high}, ${sure} de cada 100 veces.`,
    count: (n, sd) => `${count(n, 'medida', 'medidas')}, variación ${sd}.`,
    reading: (blur) => `Solo la regla ya desdibuja una medida en ${blur}.`,
    usual: 'A trazos, lo que la tabla supone para el primer lavado:',
    usualOf: (way, usual, low, high) => `${along[way].toLowerCase()} ${usual}, de ${low} a ${high}`,
    label: (way, change) => `${way}: ${change}`,
    notes,
  },
  quilt: {
    title: 'Tu colcha',
    kind: 'El tamaño que doy es',
    kinds: { wanted: 'el deseado, lavada', sewn: 'el que ya está cosido' },
    width: 'Ancho',
    height: 'Largo',
    none: 'Ninguno',
    prewashed: (role) => `${role}: se lava antes de cortar`,
    more: 'Con qué seguridad, con qué precisión',
    washes: 'Hablar de estos lavados',
    washesHint: 'El tamaño va por el primero.',
    fit: 'Cuánto debe acercarse',
    confidence: 'Acierta tantas veces',
    turned: 'Uno de cada dos bloques girado, para que encoja igual en los dos sentidos',
  },
  result: {
    label: 'La colcha antes y después',
    sew: 'Cose',
    sewn: 'Cosida',
    after: (washes) => `Tras ${times(washes)}`,
    either: 'Más o menos',
    shrink: 'Encoge',
    drawing: (sewn, washed) => `Dos contornos a escala: cosida ${sewn}, lavada ${washed}.`,
    shown: 'Dibujada tras tantos lavados',
    columns: (unit) => ['Lavados', `Tamaño, ${unit}`, 'Menor', 'Mayor'],
    percentColumns: ['Lavados', 'Encoge, ancho y largo', 'Mínimo', 'Máximo'],
    nearest: (columns, rows, cut) =>
      `Lo más cercano en bloques enteros: ${columns} a lo ancho, ${rows} a lo largo, corte ${cut}.`,
    nearestSize: (sewn, washed, fit) => `Son ${sewn} cosida y ${washed} lavada: ${fit}.`,
    fit: {
      width: ['más ancha', 'más estrecha', 'igual de ancha'],
      height: ['más larga', 'más corta', 'igual de larga'],
    },
    exact: (sewn) => `Lo exacto sería ${sewn} cosida.`,
    plan: 'Planear esta colcha con estas muestras',
    halve: (blocks) =>
      `Con ${count(blocks, 'bloque de prueba acolchado, lavado y medido', 'bloques de prueba acolchados, lavados y medidos')} en los dos sentidos, la duda sería la mitad.`,
    noHalve:
      'Ningún número de bloques de prueba dejaría la duda en la mitad: la tela misma varía tanto.',
    keys: { sewn: 'cosida', washed: 'lavada', doubt: 'de la menor a la mayor' },
  },
  course: {
    title: 'Lavado a lavado',
    drawing: (washes) =>
      `Encogimiento en tanto por ciento a lo largo de ${count(washes, 'lavado', 'lavados')}, una línea por tela.`,
    washes: 'lavados',
    shrink: 'encoge, %',
    quilt: 'La colcha',
    quiltAcross: 'La colcha, ancho',
    quiltDown: 'La colcha, largo',
    limit: (limit) => `tiende a ${limit}`,
    error: (error) => `ajustado a ${error}`,
    key: 'Los puntos están medidos; las líneas, ajustadas. Las barras dicen cuánto puede desviarse la colcha.',
  },
  advice: {
    title: 'Cómo se llevan las capas',
    pull: (role, says) => `${layers[role]} ${pulls[says]}`,
    by: (length, width) => `${length} a lo largo, ${width} a lo ancho, en puntos porcentuales`,
    prewash: 'Prelavar',
    noPrewash: 'No hace falta prelavar',
    why: ({ reasons }, tight) => {
      const pulled = reasons.includes('pull')
        ? `Las capas tiran demasiado distinto: ${cures[tight ?? 'backing']}, o la otra cara se arrugará.`
        : '';
      const doubted = reasons.includes('doubt')
        ? 'El tamaño lavado es menos seguro de lo que pides: prelava o mide más muestras.'
        : '';
      return [
        pulled || (doubted === '' ? 'Las capas apenas tiran distinto: se asentarán juntas.' : ''),
        doubted,
      ]
        .join(' ')
        .trim();
    },
    skew: 'Deformación',
    skewText: (cloth, skew, lean, side) =>
      `${cloth}: ${skew}. Un bloque de ${side} se ladea ${lean}.`,
    drawing: 'Un bloque tan recto como se cortó, y como se ladea; dibujado cuatro veces más.',
  },
  marking: {
    title: 'Marcar, lavar, medir',
    drawing: (marks, specimen) =>
      `Una muestra cuadrada de ${specimen}, con marcas a ${marks} tres veces en cada sentido, cortada lejos de los orillos.`,
    selvage: 'orillo',
    tenth: 'un décimo del ancho',
    roll: 'a lo largo del rollo',
    steps: (marks, specimen, far) => [
      `Corta una muestra cuadrada de ${specimen}, al hilo, fuera del décimo del ancho junto a cada orillo.`,
      `Marca tres pares de puntos a ${marks} a lo largo del rollo y tres a lo ancho. ${far}`,
      'Apunta hacia dónde va el rollo. Sobrehíla los bordes o cóselos en zigzag.',
      'Lávala y sécala como harás con la colcha. Déjala una hora extendida.',
      'Mide otra vez los mismos pares, al octavo de pulgada o al milímetro, y escríbelos.',
    ],
    far: {
      in: 'Con marcas a 18 in en una muestra de 24 in se lee más fino.',
      cm: 'Con marcas a 46 cm en una muestra de 61 cm se lee más fino.',
    },
    rows: 'Los pares de una muestra dicen lo bien que mides. Las muestras de otros sitios del rollo dicen cuánto varía la tela: tres están bien.',
    source: 'Según AATCC TM135 e ISO 5077.',
    print: 'Imprimir una hoja de marcas',
    why: (marks) =>
      `La hoja lleva marcas a ${marks}, lo máximo que cabe a la vez en Letter y A4. El cambio es un porcentaje, así que vale cualquier distancia.`,
  },
  sheet: {
    title: 'Hoja de marcas',
    check: 'Imprime al 100 %. Mide primero esta línea:',
    checkAfter: 'Si no mide eso, quita «ajustar a la página» e imprime otra vez.',
    how: 'Pon la hoja sobre la tela. Atraviesa con un alfiler el centro de cada cruz, marca el punto en la tela y señala hacia dónde va el rollo.',
    cloth: 'Tela',
    date: 'Fecha',
    washes: 'Lavados',
    roll: 'a lo largo del rollo',
    apart: (marks) => `a ${marks}`,
    before: 'Antes',
    after: 'Después',
    alongRow: ['Largo 1', 'Largo 2', 'Largo 3'],
    acrossRow: ['Ancho 1', 'Ancho 2', 'Ancho 3'],
  },
  table: {
    title: 'Lo que supone la tabla',
    columns: ['Tela', 'A lo largo', 'A lo ancho'],
    explain: 'Tanto por ciento que encoge en el primer lavado, hasta que midas.',
  },
  notes: { cautions: 'Antes de lavar', assumptions: 'Lo que hemos supuesto' },
  stale: 'Las cifras que se ven son las de antes.',
  ready: (figures) => `Calculado: ${figures}.`,
};
