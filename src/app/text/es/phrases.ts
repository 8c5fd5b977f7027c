/** What the office says in words and parts. The part in braces is the same in every language. */
export const phrases: Readonly<Record<string, string>> = {
  '{some} and {last}': '{some} y {last}',
  '{some} or {last}': '{some} o {last}',
  // What may be said of a batch's name
  'no named cultivar': 'ningún cultivar con nombre',
  '{list}, true to type': '{list}, fiel al tipo',
  'Seedling of {list}': 'De semilla de {list}',
  'Nucellar seedling of {list}, true to type': 'De semilla nucelar de {list}, fiel al tipo',
  'Name in doubt: {names}': 'Nombre dudoso: {names}',
  'not known': 'no se sabe',
  '{list}, as entered': '{list}, como se anotó',
  // What does not add up
  'sent out {number}': 'envió {number}',
  'made {number} ready for sale': 'dejó {number} listas para la venta',
  'gave {number} {material}': 'dio {number} {material}',
  'went into batch {into}': 'entró en el lote {into}',
  'were lost': 'se perdieron',
  'went on': 'pasaron de fase',
  'were finished': 'se terminaron',
  'were moved': 'cambiaron de mesa',
  'were worked over': 'se reinjertaron',
  'were worked on': 'se injertaron',
  'were used': 'se usaron',
  'were split off': 'se separaron',
  'were put with another batch': 'se juntaron con otro lote',
  'went out': 'se enviaron',
  split: 'separado',
  joined: 'juntado',
  'some plants': 'algunas plantas',
  '1 plant': '1 planta',
  '{number} plants': '{number} plantas',
  ', and {found} are more than the whole batch had': ', y {found} son más de las que tenía todo el lote',
  'batch {name}': 'el lote {name}',
  'mother tree {name}': 'la planta madre {name}',
  'the material {name}': 'el material {name}',
  'An entry ({says}) speaks of batch {batch}, which no entry has started: enter its start, or strike the entry.':
    'Una anotación ({says}) habla del lote {batch}, que ninguna anotación ha iniciado: anote su inicio, o tache la anotación.',
  'Batch {batch} was started a second time: its {plants} are put with the first, so strike one start, or give the second its own number.':
    'El lote {batch} se inició por segunda vez: sus {plants} se cuentan con las primeras, así que tache un inicio, o dé al segundo su propio número.',
  'An entry of {on} ({says}) is dated before batch {batch} began on {startedOn}: it counts from that day, so correct the date that is wrong.':
    'Una anotación del {on} ({says}) es anterior al inicio del lote {batch} el {startedOn}: cuenta desde ese día, así que corrija la fecha equivocada.',
  'Batch {batch} follows the protocol {protocol}, which is not written down: enter the protocol.':
    'El lote {batch} sigue el protocolo {protocol}, que no está escrito: anote el protocolo.',
  'Batch {batch} is of kind {kind}, which is not entered: enter the kind of tree.':
    'El lote {batch} es de la clase {kind}, que no está anotada: anote la clase de árbol.',
  'The protocol of batch {batch} has no step "{step}": strike the entry and name one of its steps, or add the step to the protocol.':
    'El protocolo del lote {batch} no tiene la fase «{step}»: tache la anotación y nombre una de sus fases, o añada la fase al protocolo.',
  'Plants of batch {batch} went to bench {bench}, which is not entered: enter the bench.':
    'Plantas del lote {batch} fueron a la mesa {bench}, que no está anotada: anote la mesa.',
  '{plants} of batch {batch} still stand on bench {bench}, which was removed: enter where they were moved to.':
    '{plants} del lote {batch} siguen en la mesa {bench}, que se quitó: anote adónde se llevaron.',
  'Batch {batch}, {step}: the record had {stood}, the count found {taken} taken, {dead} dead and {undecided} not yet to tell, which is {off} more; the count stands, so enter the move or loss that was not written down.':
    'Lote {batch}, {step}: el registro tenía {stood}, el recuento halló {taken} prendidas, {dead} muertas y {undecided} aún no se sabe, que son {off} más; vale el recuento, así que anote el traslado o la pérdida que faltó escribir.',
  'Batch {batch}, {step}: the record had {stood}, the count found {taken} taken, {dead} dead and {undecided} not yet to tell, which is {off} fewer; the count stands, so enter the move or loss that was not written down.':
    'Lote {batch}, {step}: el registro tenía {stood}, el recuento halló {taken} prendidas, {dead} muertas y {undecided} aún no se sabe, que son {off} menos; vale el recuento, así que anote el traslado o la pérdida que faltó escribir.',
  'Batch {batch}, {step}: on bench {bench} the record had {stood}, and {counted} were counted against {said} that it was said to have; the count stands, so enter the move or loss that was not written down.':
    'Lote {batch}, {step}: en la mesa {bench} el registro tenía {stood}, y se contaron {counted} frente a las {said} que se decía que tenía; vale el recuento, así que anote el traslado o la pérdida que faltó escribir.',
  'Batch {batch}, {step}: {askedPlants} {did}, but only {stood} stood there{others}{more}: count the batch, or strike the entry that is wrong.':
    'Lote {batch}, {step}: {askedPlants} {did}, pero allí solo había {stood}{others}{more}: cuente el lote, o tache la anotación equivocada.',
  ', so {elsewhere} were taken from other steps': ', así que {elsewhere} se tomaron de otras fases',
  'Batch {batch}: {askedPlants} {did}, but only {finished} were entered as finished{more}: enter the finishing, or count the batch.':
    'Lote {batch}: {askedPlants} {did}, pero solo {finished} constan como terminadas{more}: anote que se terminaron, o cuente el lote.',
  'Batch {batch} was {did} into itself, which changes nothing: strike the entry and name the other batch.':
    'El lote {batch} fue {did} consigo mismo, lo que no cambia nada: tache la anotación y nombre el otro lote.',
  'Batch {batch} was advanced from "{step}" to the same step, which changes nothing but the bench: strike the entry if another step was meant.':
    'El lote {batch} pasó de «{step}» a la misma fase, lo que solo cambia la mesa: tache la anotación si se quería decir otra fase.',
  '{plants} of {other} were joined to batch {batch} of {kind}: split them again, or enter under which names the batch may go.':
    '{plants} de {other} se juntaron con el lote {batch} de {kind}: sepárelas de nuevo, o anote con qué nombres puede ir el lote.',
  'Only {number} of the {alive} plants of batch {batch} were worked over: split those off so that each keeps its right name.':
    'Solo se reinjertaron {number} de las {alive} plantas del lote {batch}: sepárelas para que cada una conserve su nombre justo.',
  'Batch {batch}, {step}: {graded} were graded, but {stood} stand there: count them, or correct the grades.':
    'Lote {batch}, {step}: se clasificaron {graded}, pero allí hay {stood}: cuéntelas, o corrija las categorías.',
  '{returned} of batch {batch} came back, but only {dispatched} had gone out: check which batch they are.':
    'Volvieron {returned} del lote {batch}, pero solo habían salido {dispatched}: compruebe de qué lote son.',
  'Batch {batch} was settled as {cultivar}, which was not among the names it might have: check the finding.':
    'El lote {batch} se aclaró como {cultivar}, que no estaba entre sus nombres posibles: compruebe el hallazgo.',
  'Batch {batch} began with {number} worked plants, but {rootstocks} rootstocks are named for it: correct the number, or name the other rootstocks.':
    'El lote {batch} empezó con {number} plantas injertadas, pero se nombran {rootstocks} patrones: corrija el número, o nombre los otros patrones.',
  'Batch {batch} is to be {wanted}, but wood of {got} went into it ({from}): put it on hold until the name is sure, then correct the kind or the source.':
    'El lote {batch} ha de ser {wanted}, pero le entró madera de {got} ({from}): reténgalo hasta que el nombre sea seguro, y corrija luego la clase o el origen.',
  'An entry names {person}, who is not entered among the people: enter the person, or strike what was said under a wrong name.':
    'Una anotación nombra a {person}, que no está entre las personas: anote a la persona, o tache lo dicho con un nombre equivocado.',
  '{number} entries name {person}, who is not entered among the people: enter the person, or strike what was said under a wrong name.':
    '{number} anotaciones nombran a {person}, que no está entre las personas: anote a la persona, o tache lo dicho con un nombre equivocado.',
  'An entry ({says}) names the mother tree {mother}, which is not entered: enter the tree, or strike the entry.':
    'Una anotación ({says}) nombra la planta madre {mother}, que no está anotada: anote la planta, o tache la anotación.',
  'Mother tree {mother} was seen at growth stage "{says}", which is no BBCH code: strike the entry, and say the stage in two figures.':
    'La planta madre {mother} se vio en el estado «{says}», que no es un código BBCH: tache la anotación, y diga el estado con dos cifras.',
  'Mother tree {mother} gave {given} {material} in the season of {season}, and {mayGive} is what it may give without harm: spare it, or correct what it may give.':
    'La planta madre {mother} dio {given} {material} en la campaña de {season}, y puede dar {mayGive} sin daño: déjela descansar, o corrija lo que puede dar.',
  'Mother tree {mother} gave {material} on {on}, after it was retired on {retiredOn}: check which tree they are from.':
    'La planta madre {mother} dio {material} el {on}, después de retirarse el {retiredOn}: compruebe de qué planta son.',
  'An entry ({says}) uses the material {lot}, which no entry has collected: enter where it was cut, or strike the entry.':
    'Una anotación ({says}) usa el material {lot}, que ninguna anotación ha recogido: anote dónde se cortó, o tache la anotación.',
  'The material {lot} was collected a second time, and only the first counts: give the second lot its own number.':
    'El material {lot} se recogió por segunda vez, y solo cuenta la primera: dé al segundo su propio número.',
  'Of the material {lot}, {number} were collected and {used} used or thrown away, so some were counted twice: correct one of the entries.':
    'Del material {lot} se recogieron {number} y se usaron o desecharon {used}, así que algunas se contaron dos veces: corrija una de las anotaciones.',
  'The material {lot} was used on {on}, after {goodUntil} when it should have been used up: watch the take, or correct the date.':
    'El material {lot} se usó el {on}, después del {goodUntil}, cuando debía estar gastado: vigile el prendimiento, o corrija la fecha.',
  'The material {lot} was used on {on}, before it was collected on {collectedOn}: correct the date that is wrong.':
    'El material {lot} se usó el {on}, antes de recogerse el {collectedOn}: corrija la fecha equivocada.',
  'An entry ({says}) names the order {order}, which is not entered: enter the order, or strike the entry.':
    'Una anotación ({says}) nombra el pedido {order}, que no está anotado: anote el pedido, o tache la anotación.',
  'Order {order} asks for {number}, and {dispatched} have gone out: check the last dispatch, or change the order.':
    'El pedido {order} pide {number}, y han salido {dispatched}: compruebe el último envío, o cambie el pedido.',
  '{plants} went out for order {order} after it was cancelled: call them back, or place the order again.':
    '{plants} salieron para el pedido {order} después de anularse: hágalas volver, o haga de nuevo el pedido.',
  '{plants} of {kind} (batch {batch}) went out for order {order}, which asks for {wanted}: tell the buyer, or correct the entry.':
    '{plants} de {kind} (lote {batch}) salieron para el pedido {order}, que pide {wanted}: avise al comprador, o corrija la anotación.',
  '{Thing} {did} on {on}, while a hold of {since} stood ({why}): find them, keep them apart, and enter what was done.':
    '{Thing} {did} el {on}, con una retención vigente desde el {since} ({why}): búsquelas, manténgalas aparte y anote lo que se hizo.',
  'An entry releases a hold that is not in the record ({hold}): strike it, or place the hold.':
    'Una anotación libera una retención que no está en el registro ({hold}): táchela, o anote la retención.',
  'An entry strikes another that has not arrived ({entry}): let every phone send what it holds.':
    'Una anotación tacha otra que no ha llegado ({entry}): que cada teléfono envíe lo que tiene.',
  'An entry strikes a striking that is not older than itself ({entry}), so it has no effect: strike the right entry.':
    'Una anotación tacha una tachadura que no es más antigua ({entry}), así que no tiene efecto: tache la anotación debida.',
  'An entry says "{says}", which only a newer version of the program understands: it is kept and counts after the update.':
    'Una anotación dice «{says}», que solo entiende una versión más nueva del programa: se guarda y contará después de actualizar.',
  // Tasks
  'Count: {sign}, dead, not yet to tell': 'Contar: {sign}, muertas, aún no se sabe',
  '{step}: move to {place}': '{step}: llevar a {place}',
  'Grade and finish': 'Clasificar y terminar',
  'Collect {material}': 'Recoger {material}',
  '{mother}': '{mother}',
  'Begin {noun}': 'Empezar {noun}',
  '{number} {kind}': '{number} {kind}',
  '{number} {kind} from batch {batch}': '{number} {kind} del lote {batch}',
  'Dispatch to {buyer}': 'Enviar a {buyer}',
  'No working day is left in this week.': 'En esta semana no queda ningún día de trabajo.',
  'No one is there in this week.': 'En esta semana no hay nadie.',
  'No one who is there has the skill: {skill}.': 'Nadie de los que hay sabe hacerlo: {skill}.',
  'No hours are left in this week.': 'En esta semana no quedan horas.',
  'No hours are left in this week for {skill}.': 'En esta semana no quedan horas de {skill}.',
  // What changed, and why
  'order {order} is now {now} in 100 instead of {before}':
    'el pedido {order} está ahora en {now} de 100 en vez de {before}',
  '{news}, and both draw on {scarce}': '{news}, y los dos piden de {scarce}',
  '{Says}, since {because}.': '{Says}, porque {because}.',
  '{Says}: planned anew, since {because}.': '{Says}: se planificó de nuevo, porque {because}.',
  'week {week}': 'semana {week}',
  'weeks {from} to {to}': 'semanas {from} a {to}',
  ' in {weeks}': ' en {weeks}',
  '{number} {noun} of {kind} move from {from} to {to}': '{number} {noun} de {kind} pasan de {from} a {to}',
  '{now} {noun} of {kind} in {weeks} instead of {before}, in other weeks than before':
    '{now} {noun} de {kind} en {weeks} en vez de {before}, en otras semanas que antes',
  '{number} {noun} of {kind} in {week}, not planned before':
    '{number} {noun} de {kind} en {week}, antes sin planificar',
  'none of the {number} {noun} of {kind} in {week}': 'nada de {number} {noun} de {kind} en {week}',
  '{number} more {noun} of {kind} in {week}': '{number} {noun} más de {kind} en {week}',
  '{number} fewer {noun} of {kind} in {week}': '{number} {noun} menos de {kind} en {week}',
  '{starts} kind of start changes': 'cambia {starts} tipo de inicio',
  '{starts} kinds of start change': 'cambian {starts} tipos de inicio',
  '{orders} order is a little more or less sure': '{orders} pedido es algo más o menos seguro',
  '{orders} orders are a little more or less sure': '{orders} pedidos son algo más o menos seguros',
  'nothing entered since then bears on it: the plan was worked out anew and took a way about as good':
    'nada anotado desde entonces influye en ello: el plan se calculó de nuevo y tomó un camino más o menos igual de bueno',
  '{changed} and {surer}': '{changed} y {surer}',
  '{What}; {because}.': '{What}; {because}.',
  '{name} moved on': '{name} pasó de fase',
  '{name} was measured': '{name} se midió',
  '{name} was split': '{name} se separó',
  '{name} was put with another': '{name} se juntó con otro',
  '{name} was worked over': '{name} se reinjertó',
  '{name} lost {number} ({cause})': '{name} perdió {number} ({cause})',
  '{name} was begun with {number}': '{name} se inició con {number}',
  '{number} of {name} are finished': 'se terminaron {number}: {name}',
  '{number} of {name} went out': 'salieron {number}: {name}',
  '{number} of {name} came back': 'volvieron {number}: {name}',
  '{name} is lost ({why})': '{name} se perdió ({why})',
  '{name} was entered anew': '{name} se anotó de nuevo',
  '{name} was tested positive ({test})': '{name} dio positivo ({test})',
  '{number} {material} of {name} are in store': 'hay guardadas {number} {material}: {name}',
  '{number} {material} of {name} were thrown out': 'se desecharon {number} {material}: {name}',
  '{name} is on hold ({why})': 'hay retención: {name} ({why})',
  '{name} is no longer on hold': 'ya no hay retención: {name}',
  'bench {bench} was changed': 'la mesa {bench} cambió',
  'bench {bench} is gone': 'la mesa {bench} ya no está',
  'the hours, skills or days away of {person} were changed':
    'cambiaron las horas, los oficios o las ausencias de {person}',
  'Of {number} {kind} that were set to begin in week {week}, {begun} are planned: no order wants more, or room, hands, wood or rootstocks lack.':
    'De {number} {kind} cuyo inicio se fijó en la semana {week}, se planean {begun}: ningún pedido quiere más, o faltan sitio, manos, madera o patrones.',
  '{number} {kind} were set to begin in week {week}, in which they may not begin.':
    'El inicio de {number} {kind} se fijó en la semana {week}, en la que no pueden empezar.',
  'Going through {seasons} seasons.': 'Se recorren {seasons} campañas.',
  'Looking for the earliest week.': 'Se busca la semana más temprana.',
  'Reading the sheets.': 'Se leen las hojas.',
  'a start of {number} {kind} was set in week {week}':
    'se fijó un inicio de {number} {kind} en la semana {week}',
  'the rate was set anew ({why})': 'la tasa se fijó de nuevo ({why})',
  'a figure of {fruit} was set anew ({why})': 'una cifra de {fruit} se fijó de nuevo ({why})',
  'the protocol “{protocol}” was changed': 'el protocolo «{protocol}» cambió',
  'an entry about {name} was struck ({why})': 'se tachó una anotación sobre {name} ({why})',
  '{name} counted {taken} and {undecided} not yet to tell, where {expected} were expected':
    'en {name} se contaron {taken} y {undecided} aún no se sabe, donde se esperaban {expected}',
  '{name} counted {taken} and {undecided} not yet to tell':
    'en {name} se contaron {taken} y {undecided} aún no se sabe',
  '{name} counted {taken} where {expected} were expected':
    'en {name} se contaron {taken} donde se esperaban {expected}',
  '{name} counted {taken}': 'en {name} se contaron {taken}',
  'batch {batch}': 'el lote {batch}',
  'mother tree {mother}': 'la planta madre {mother}',
  'bench {bench}': 'la mesa {bench}',
  'order {order} was cancelled': 'el pedido {order} se anuló',
  'order {order} came in ({number})': 'entró el pedido {order} ({number})',
  'order {order} is now {number} instead of {was}': 'el pedido {order} es ahora de {number} en vez de {was}',
  'order {order} was changed': 'el pedido {order} cambió',
  'the {place}': '{place}',
  'the hands for {skill}': 'las manos para {skill}',
  // What limits, and what was assumed
  '{Subject}, {when}: one more {unit} is worth {worth}{per}.':
    '{Subject}, {when}: por {unit} de más se ganarían {worth}{per}.',
  '{Subject}, {when}: {unit} more is worth {worth}{per}.':
    '{Subject}, {when}: por {unit} de más se ganarían {worth}{per}.',
  ' a week': ' por semana',
  'season of {year}': 'campaña de {year}',
  'mother block': 'campo de plantas madre',
  'its ground': 'su terreno',
  'in store': 'guardado',
  'licence of {kind}': 'licencia de {kind}',
  '{year}': '{year}',
  '{short} of the {number} planned for it cannot be made in time: {limit}.':
    '{short} de {number} planificados para él no se pueden hacer a tiempo: {limit}.',
  '{number} are ready only in {weeks}, after its due week: {limit}.':
    '{number} están listos solo en {weeks}, después de su semana: {limit}.',
  'It hangs on batches that stand already, and it is too late to begin more.':
    'Depende de lotes que ya están en pie, y es tarde para iniciar más.',
  'More would not help enough: {limit}.': 'Más no ayudaría bastante: {limit}.',
  'It is filled from trees that are finished already.': 'Se sirve con árboles ya terminados.',
  'Trees made for other orders of the same kind stand in for it.':
    'Árboles hechos para otros pedidos de la misma clase lo respaldan.',
  'A start that was set by hand makes more than it asks for.':
    'Un inicio puesto a mano hace más de lo que pide.',
  'Whole trays make a little more than it asks for.': 'Las bandejas enteras hacen algo más de lo que pide.',
  'The smallest batch that is begun makes more than it asks for.':
    'El lote más pequeño que se empieza hace más de lo que pide.',
  'The batches that stand already give more than it asks for.':
    'Los lotes que ya hay dan más de lo que pide.',
  'Its starts stay as they were shown: to begin fewer would save little.':
    'Sus inicios quedan como se mostraron: empezar menos ahorraría poco.',
  'No plan nearer to what it asks for was found.': 'No se encontró un plan más cercano a lo que pide.',
  'there is no way to make it here': 'aquí no hay modo de hacerlo',
  'nothing begun now is ready by then': 'nada iniciado ahora está listo para entonces',
  'time is what lacks': 'lo que falta es tiempo',
  'the {place} is full{week}': 'en {place} no cabe más{week}',
  'hands for {skills} are all taken{week}': 'las manos para {skills} están todas ocupadas{week}',
  'the licence of {kind} is used up': 'la licencia de {kind} está agotada',
  '{wood}: the mother trees give no more (one more is worth {worth})':
    '{wood}: las plantas madre no dan más (una más valdría {worth})',
  'Plant {trees} mother tree of {cultivar} by week {week} of {year}: those that stand do not give the {material} that the orders need.':
    'Plante {trees} planta madre de {cultivar} hasta la semana {week} de {year}: las que hay no dan las {material} que piden los pedidos.',
  'Plant {trees} mother trees of {cultivar} by week {week} of {year}: those that stand do not give the {material} that the orders need.':
    'Plante {trees} plantas madre de {cultivar} hasta la semana {week} de {year}: las que hay no dan las {material} que piden los pedidos.',
  'What stands in the {place} already takes up to {area} more than its benches have.':
    'Lo que hay en {place} ya ocupa hasta {area} más de lo que tienen sus mesas.',
  '{number} more than the mother trees may give are needed of {wood}: begin fewer, or find more wood.':
    'De {wood} hacen falta {number} más de lo que pueden dar las plantas madre: empiece menos, o busque más material.',
  '{number} of {kind} are bought in.': 'Se compran {number} de {kind}.',
  'One batch fewer is taken to be worth {minutes} minutes beside its own work, for its bench, label, card and counts: common practice, no source. It is weighed and not paid.':
    'Un lote menos se toma como {minutes} minutos además de su propio trabajo, por su mesa, etiqueta, ficha y recuentos: práctica común, sin fuente. Se pondera y no se paga.',
  'Batch {batch} is left out: its protocol is not registered.':
    'El lote {batch} queda fuera: su protocolo no está anotado.',
  'Batch {batch} is left out: its kind is not registered.':
    'El lote {batch} queda fuera: su clase no está anotada.',
  'Order {order} is left out: the kind {kind} is not registered.':
    'El pedido {order} queda fuera: la clase {kind} no está anotada.',
  'Order {order} is left out: its latest day, {latest}, has passed.':
    'El pedido {order} queda fuera: su último día, el {latest}, ha pasado.',
  'Order {order} was due on {due}: it is planned for as soon as can be.':
    'El pedido {order} era para el {due}: se planifica para cuanto antes.',
  'No mother tree is registered for {wood}: it is taken as bought in, as much as is needed.':
    'No hay planta madre anotada para {wood}: se toma como comprado, tanto como haga falta.',
  '{of}, {material}': '{of}, {material}',
  '{kind} cannot be made by {protocol}: that protocol is not registered.':
    '{kind} no se puede hacer por {protocol}: ese protocolo no está anotado.',
  '{kind} is not begun by {protocol}: no rootstock kind is named for it.':
    '{kind} no se inicia por {protocol}: no se nombra ninguna clase de patrón.',
  '{kind} by {protocol}: no bench is a {place}, so no area is counted for "{step}".':
    '{kind} por {protocol}: ninguna mesa es de «{place}», así que no se cuenta superficie para «{step}».',
  'no one has the skill: {skill}': 'nadie sabe hacerlo: {skill}',
  'the mother trees give none then ({wood})': 'las plantas madre no dan entonces ({wood})',
  'the mother trees give no more ({wood})': 'las plantas madre no dan más ({wood})',
  'no rootstocks are free in week {week} ({kinds})': 'no hay patrones libres en la semana {week} ({kinds})',
  // The planner at work
  'Reading the nursery.': 'Leyendo el vivero.',
  'No order is open.': 'No hay ningún pedido abierto.',
  'Round {round}: the order furthest from its wish is {points} points off.':
    'Vuelta {round}: al pedido más lejos de su deseo le faltan {points} puntos.',
  'Weighing {ways} ways over {weeks} weeks.': 'Ponderando {ways} modos en {weeks} semanas.',
  'Saying it in words.': 'Poniéndolo en palabras.',
  'Reading the plan as it is.': 'Leyendo el plan como está.',
  'Weighing what would be otherwise.': 'Ponderando lo que sería distinto.',
  'Planning what it moves.': 'Planificando lo que mueve.',
  'Stopped with the best plan so far.': 'Parado con el mejor plan hasta ahora.',
  'The plan is ready.': 'El plan está listo.',
  'The plan could not be made.': 'No se pudo hacer el plan.',
  'The planner ended without an answer.': 'El planificador acabó sin respuesta.',
  'Stopping with the best plan so far.': 'Parando con el mejor plan hasta ahora.',
}
