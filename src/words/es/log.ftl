# Spanish, in Fluent syntax: what Log says, and the record below Fill's answer. See fill.ftl for the kind of Spanish.

## Recording a fill
log-recording = El registro
record-fill = Registrar este llenado
record-fill-rests = Ya está registrado
record-fill-waits = Todavía no se guarda
log-recorded = Registrado { $time }, número { $number }.
log-recorded-other = { $machine }, { $day }: registrado { $time }, número { $number }.
log-not-recorded = No se registró: { $why }
log-correct-it = Corregirlo
log-stopped = No puede registrar este plan: una advertencia lo impide.
log-stopped-way = Escriba lo que hizo de verdad
log-details = Agregar al registro antes de pulsar
log-details-next = Ese llenado está registrado. Lo que escriba ahora va con el próximo: { $product } en { $machine }. Para agregar algo al que ya está registrado, pulse “Corregirlo”.
log-details-for = Va con el próximo registro: { $product } en { $machine }.
log-details-hint = Todo puede quedar vacío. Se borra una vez registrado, y cuando usted pasa luego a otra máquina, producto o piso; sus iniciales se quedan en este aparato.
log-who = Sus iniciales
log-who-hint = Dos o tres letras. Se pueden borrar después de la bitácora.
log-areas = Áreas para las que es este llenado
log-area = Agregar un área
log-area-more = Elija un área
log-measured = Concentrado que midió
log-measured-hint = Déjelo vacío si tomó lo que dijo la página y no midió.
log-no-volume = Esta dosis no es un volumen. Lo que pesó o contó va en las notas.
log-scale = Qué dice la lectura
log-scale-none = No se leyó nada
log-scale-active = Sustancia activa
log-scale-ratio = Fuerza de la solución
log-reading = Lectura
log-reading-take = Tomar la lectura de { $reading }
log-deviation = ¿Lo hizo de otra forma?
log-deviation-none = No, como dice la página
log-deviation-more = Más concentrado
log-deviation-less = Menos concentrado
log-deviation-other-product = Otro producto
log-deviation-other = Otra cosa
log-other-product = ¿Qué producto se puso?
log-other-unlisted = Ninguno de estos: lo escribo abajo
log-planned-other = planeado: { $product }, { $dose }
log-other-rest = El llenado no se cuenta para { $product }. En el tanque puede quedar un resto de otro producto: lo que hay y lo que usted echa pueden no ir juntos.
log-other-way = Vea Precauciones antes de llenar
log-reason = Por qué de otra forma
log-notes = Notas
log-left-undone = Sin hacer el { $day }, { $machine }: { $tasks }. Hágalo antes de llenar.
log-left-undone-unticked = Sin hacer el { $day }, { $machine }: nadie lo marcó después del último llenado. Revise la máquina antes de llenar.
log-left-way = Márquelo en el fin del turno
remark-log-more = Usted midió { $measured }, más que los { $planned } planeados. Regístrelo si eso es lo que se puso.
remark-log-more-title = Más de lo planeado
remark-log-less = Usted midió { $measured }, menos que los { $planned } planeados. Regístrelo si eso es lo que se puso.
remark-log-less-title = Menos de lo planeado
remark-log-over-label = Usted midió { $measured }. Para este llenado manda la etiqueta: no más de { $most }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-over-label-title = Demasiado: fuera de la etiqueta
remark-log-under-label = Usted midió { $measured }. Para este llenado manda la etiqueta: no menos de { $least }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-under-label-title = Muy poco: fuera de la etiqueta
remark-log-under-minimum = Usted midió { $measured }. Para este llenado manda el mínimo legal: no menos de { $least }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-under-minimum-title = Muy poco: menos del mínimo
remark-log-over-standard = Usted midió { $measured }. Para este llenado manda su norma: no más de { $most }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-over-standard-title = Demasiado: fuera de su norma
remark-log-under-standard = Usted midió { $measured }. Para este llenado manda su norma: no menos de { $least }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-under-standard-title = Muy poco: fuera de su norma
remark-log-over-machine = Usted midió { $measured }. Para este llenado manda el límite de la máquina: no más de { $most }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-over-machine-title = Demasiado: fuera del límite de la máquina
remark-log-under-machine = Usted midió { $measured }. Para este llenado manda el límite de la máquina: no menos de { $least }. Registre lo que se puso, y corrija el tanque antes de limpiar con él.
remark-log-under-machine-title = Muy poco: fuera del límite de la máquina
remark-log-over-tank = Usted escribe { $level }. En el tanque de esta máquina caben { $tank }.
remark-log-over-tank-title = Más de lo que cabe en el tanque
log-lack-reason = Diga por qué lo hizo de otra forma.
log-lack-why = Diga por qué lo corrige.
log-lack-product = Elija el producto.
log-lack-scale = Elija qué dice la lectura.
log-lack-nothing = Escriba al menos una cantidad, o una nota.
log-lack-day = Eso no es un día.
log-lack-time = Diga a qué hora fue, como 06:30.
log-lack-later = Esa hora todavía no ha llegado.

## What the browser did not keep
log-not-kept = { $n ->
    [one] { $n } registro todavía no se guarda
   *[other] { $n } registros todavía no se guardan
 }
log-again = Probar otra vez
log-let-go = Dejarlo ir
log-waiting-save = Guardar como archivo
log-denied = El navegador no guarda nada para esta página. Así es en una ventana privada, y cuando el almacenamiento está bloqueado. Guarde el registro como archivo, o abra la página en una ventana normal.
log-full = En el aparato ya no cabe. Guarde el registro como archivo, haga espacio en el aparato y pruebe otra vez.
log-newer = Una versión más nueva de la página guarda la bitácora en este aparato. Cargue la página de nuevo.
log-blocked = Otra pestaña con una versión más vieja de la página tiene la bitácora. Ciérrela y pruebe otra vez.
log-unreadable = El navegador no puede leer la bitácora que guarda. Guarde como archivo lo que se muestra aquí, y abra su última copia.
log-no-random = El navegador no da números al azar, así que el registro no se puede sellar. Guárdelo como archivo, o use otro navegador.
log-failed = El navegador no lo guardó: { $text }. Pruebe otra vez, o guárdelo como archivo.

## The view
log-heading = ¿Qué se llenó?
log-parts = Partes de la bitácora
log-fills = Llenados
log-shift = Fin del turno
log-questions = Preguntas
log-keep = Copia y cuidado
log-opening = Se está abriendo la bitácora.
log-opening-of = Se está abriendo la bitácora: { $done } de { $of } llenados.
log-shut = No se puede abrir la bitácora
log-shut-do = Todavía puede registrar un llenado: se queda en la pantalla hasta que se guarde, aquí o como archivo.
log-count = { $n ->
    [one] { $n } llenado en la bitácora. Este aparato escribe como { $device }.
   *[other] { $n } llenados en la bitácora. Este aparato escribe como { $device }.
 }
log-count-struck = { $n ->
    [one] { $n } de ellos se escribió por error y no se cuenta en ninguna parte.
   *[other] { $n } de ellos se escribieron por error y no se cuentan en ninguna parte.
 }
log-backup-last = { $n ->
    [one] Última copia { $when }; desde entonces hay { $n } registro más.
   *[other] Última copia { $when }; desde entonces hay { $n } registros más.
 }
remark-log-backup-none = { $n ->
    [one] No hay ninguna copia. Si este aparato se pierde, se pierde con él { $n } registro.
   *[other] No hay ninguna copia. Si este aparato se pierde, se pierden con él { $n } registros.
 }
remark-log-backup-none-title = Guarde una copia
remark-log-backup-old = { $n ->
    [one] La última copia es de hace { $days } días. Si este aparato se pierde, se pierde con él { $n } registro.
   *[other] La última copia es de hace { $days } días. Si este aparato se pierde, se pierden con él { $n } registros.
 }
remark-log-backup-old-title = Guarde una copia
log-save-now = Guardar una copia ahora
log-lost = Faltan registros
log-lost-line = { $device }: números { $from } a { $to }
log-lost-do = Aquí estuvieron. El navegador los perdió. Abra su última copia: lo que ella tiene vuelve.
log-clock-back = { $n ->
    [one] El reloj de este aparato se atrasó antes de { $n } registro. Su hora puede estar mal; no se pierde nada.
   *[other] El reloj de este aparato se atrasó antes de { $n } registros. Sus horas pueden estar mal; no se pierde nada.
 }
log-astray = { $n ->
    [one] { $n } corrección nombra un llenado que no está en esta bitácora. Abra la copia que tiene el llenado.
   *[other] { $n } correcciones nombran llenados que no están en esta bitácora. Abra la copia que tiene los llenados.
 }

## Which fills
log-seek = Qué llenados
seek-month = Mes
seek-product = Producto
seek-machine = Máquina
seek-area = Área
seek-standard = Norma
seek-who = Quién
seek-any = Todos
seek-all = Mostrar todos los llenados
log-shown = { $shown } de { $n } llenados

## The table
log-table = Llenados, primero el más nuevo
log-caption = { $n ->
    [one] { $n } llenado, primero el más nuevo
   *[other] { $n } llenados, primero el más nuevo
 }
log-keys = Use las flechas, Re Pág, Av Pág, Inicio y Fin para ir de llenado en llenado. Pulse Intro para abrir uno.
log-empty = Todavía no hay ningún llenado registrado. Llenado tiene para eso un botón debajo de la cantidad.
log-none-found = Ningún llenado es así. Elija menos, o muestre todos.
log-column-when = Cuándo
log-column-product = Producto
log-column-planned = Planeado
log-column-measured = Medido
log-column-machine = Máquina
log-column-who = Quién
log-struck = por error
log-contested = dos con este número
log-corrected = corregido
log-title = Número { $number }, { $when }: { $product }, { $machine }
log-history = Lo que se escribió, en orden
log-past = { $kind }, { $number }, { $when }.
log-written-by = Escrito por { $who }.
log-kind-fill = Llenado
log-kind-correction = Corrección
log-kind-erasure = Borrado
log-kind-lesson = Práctica
log-kind-unsaid = Registro
log-part-by = Quién lo escribió
log-part-who = Quién lo hizo
log-part-reason = Por qué de otra forma
log-part-notes = Notas
log-part-why = Por qué se corrige
log-erased-parts = Borrado
log-blanked = Borrado a pedido
log-altered-text = No es lo que se escribió
log-nothing = Nada
log-struck-field = Cuenta
log-is-struck = No: escrito por error
log-not-struck = Sí
log-standard = Norma
log-standard-of = { $name }, versión { $version }
log-product = Producto
log-machine = Máquina
log-floor = Piso
log-at = Cuándo se hizo
log-day = Día del llenado
log-time = Hora del llenado
log-station = Cómo llama usted a este aparato
log-station-hint = Los registros que escribe aquí lo dicen, por ejemplo “Estación de llenado, biblioteca”.
log-this-device = Este aparato
log-done-by = Quién lo hizo
log-done-by-hint = Iniciales
log-concentrate = Concentrado planeado
log-water = Agua planeada
log-level = Lleno hasta
log-end-of-shift = Fin del turno
log-unknown-record = No se sabe
log-choose-product = Elija el producto
log-as = El registro dice que lo hizo { $who }.
log-new-day = Es un nuevo día. ¿Quién es usted?
log-still = Sigo siendo { $who }
log-other-person = Otra persona
log-correct = Corregir este registro

## By hand, and corrections
log-by-hand = Escribir un llenado a mano
log-hand-heading = Un llenado a mano
log-hand-hint = Escriba lo que se hizo de verdad. Deje vacíos el día y la hora si fue ahora mismo.
log-hand-record = Registrarlo
log-leave-form = Cerrar sin guardar
log-correct-heading = Corregir un registro
log-correct-hint = El primer registro queda como estaba. Lo que cambie aquí se escribe debajo, con sus iniciales y por qué. Un texto que usted vacía queda como estaba; solo borrar lo quita.
log-why = Por qué lo corrige
log-nothing-new = Todavía no hay ningún cambio.
log-correct-save = Guardar la corrección
log-strike = Escrito por error
log-unstrike = Sí cuenta
log-strike-hint = Un llenado escrito por error se queda en la bitácora y no se cuenta en ninguna parte.

## End of the shift
log-left = Sin hacer, o sin marcar
log-left-line = { $machine }, { $day }: { $tasks }
log-left-line-unticked = { $machine }, { $day }: nadie lo marcó después del último llenado
log-shift-today = Llenadas en las últimas 24 horas
log-shift-hint = Marque cada máquina en este orden. Se guarda enseguida, con el último llenado de la máquina.
log-shift-none = No se llenó ninguna máquina en las últimas 24 horas.
log-shift-late = Antes, sin marcar
log-shift-late-hint = Estas se llenaron en los últimos 7 días y algo quedó pendiente. Marque lo que ya está hecho.
log-shift-machine = { $n ->
    [one] { $machine }: { $n } llenado, a las { $time }
   *[other] { $machine }: { $n } llenados, el último a las { $time }
 }
log-task-drain = Tanques vaciados
log-task-rinse = Tanques enjuagados
log-task-filters = Filtros limpios
log-task-brush = Bolsa de basura o cepillo limpios
log-task-squeegee = Escurridor limpio
log-state-done = Hecho
log-state-not-done = No hecho
log-state-not-asked = Sin marcar

## Questions
log-by = Contar por
log-by-product = Producto
log-by-machine = Máquina
log-by-area = Área
log-by-month = Mes
log-by-who = Quién
log-by-standard = Norma
log-unnamed = Sin nombre
log-uncounted = { $n } de { $of } llenados no se pudieron contar aquí.
log-column-what = De qué
log-column-fills = Llenados
log-column-used = Usado
log-column-off = De más o de menos
log-column-share = En por ciento
log-column-otherwise = De otra forma, sin hacer, notas
log-column-compared-planned = Planeado, de lo medido
log-column-compared = Medido
log-column-uncounted = Sin contar
log-column-number = Número
log-column-ratio = Medido de lo planeado
log-column-range = Desde el anterior
log-column-stands-out = Se sale
log-column-price = Precio
log-column-cost = Costo
log-column-left = Queda
log-column-daily = Por día
log-column-lasts = Dura
log-column-recipe = Receta
log-column-readings = Lecturas
log-column-mean = Promedio
log-column-week = Cambio por semana
log-column-doubt = Duda
log-column-says = Qué dice eso
log-column-task = Tarea
log-column-left-undone = Sin hacer
log-column-water = Agua
ask-use = ¿Cuánto se usó?
ask-use-picture = Concentrado usado.
ask-use-legend = La barra es lo usado; la línea es lo planeado.
ask-use-table = Uso frente al plan
remark-log-use-none = Ningún llenado tiene una cantidad que se pueda sumar.
remark-log-use-planned = { $fills ->
    [one] { $used } según el plan, de { $fills } llenado. Nadie midió, así que esto es lo planeado, no lo vertido.
   *[other] { $used } según el plan, de { $fills } llenados. Nadie midió, así que esto es lo planeado, no lo vertido.
 }
remark-log-use-even = { $used } en { $fills } llenados. Los { $measured } que se midieron tomaron lo planeado.
remark-log-use-over = { $used } en { $fills } llenados. Los { $measured } que se midieron tomaron { $off } más de lo planeado: { $share } de más.
remark-log-use-under = { $used } en { $fills } llenados. Los { $measured } que se midieron tomaron { $off } menos de lo planeado: { $share } de menos.
remark-log-assumed = { $n ->
    [one] { $n } llenado no se midió y se cuenta como se planeó.
   *[other] { $n } llenados no se midieron y se cuentan como se planearon.
 }
remark-log-shared = { $n ->
    [one] { $n } vez un llenado fue para varias áreas. A cada una se le da todo, así que el uso por área es lo máximo que puede ser.
   *[other] { $n } veces un llenado fue para varias áreas. A cada una se le da todo, así que el uso por área es lo máximo que puede ser.
 }
ask-doses = ¿Fueron las dosis como se planearon?
ask-doses-picture = Medido de lo planeado, llenado por llenado, con sus límites.
ask-doses-values = Medido de lo planeado
ask-doses-ranges = Distancia al llenado anterior
ask-doses-legend = Línea fina: el promedio. Líneas cortadas: los límites. Un anillo con un número se sale; la tabla dice por qué.
ask-doses-table = Los llenados de la gráfica
ask-constant = { $symbol } = { $value }
remark-log-doses-high = En promedio recibieron { $mean } de lo planeado: demasiado, llenado tras llenado. Que varíen parejo no lo hace correcto.
remark-log-doses-low = En promedio recibieron { $mean } de lo planeado: muy poco, llenado tras llenado. Que varíen parejo no lo hace correcto.
remark-log-doses-none = Ningún llenado tiene a la vez una cantidad planeada y una medida.
remark-log-doses = De { $known } llenados medidos, { $within } estuvieron dentro de una décima parte del plan, { $over } por encima y { $under } por debajo.
remark-log-chart-few = Una gráfica necesita { $fewest } llenados medidos; hay { $n }.
remark-log-chart-steady = De los últimos { $n } ninguno se sale: varían como siempre.
remark-log-chart-out = De los últimos { $n } llenados { $out } se salen de la variación usual. Pregunte qué fue distinto. También se salen { $run } seguidos de un mismo lado del promedio.
remark-log-chart-pulled = Los llenados fuera de los límites jalan el promedio hacia ellos. Vea primero esos: corrija lo que se escribió mal.
remark-log-chart-estimate = Estos límites son una estimación: vienen de solo { $n } valores.
control-beyond = Fuera de los límites
control-jump = Un salto desde el llenado anterior
control-run = Ocho o más de un lado del promedio
ask-cost = ¿Cuánto costó?
ask-cost-picture = Costo por producto.
ask-cost-table = Costo por producto
remark-log-cost-none = Ningún llenado tiene a la vez una cantidad y un precio. Los precios están con los productos en Sitio.
remark-log-cost = { $fills ->
    [one] El costo de { $fills } llenado, a los precios de hoy. { $assumed } de ellos como se planeó, sin medir.
   *[other] El costo de { $fills } llenados, a los precios de hoy. { $assumed } de ellos como se planeó, sin medir.
 }
remark-log-unpriced = No se conoce el precio de { $products }; no está en la suma.
remark-log-water-free = No se conoce el precio del agua; el agua no está en la suma.
ask-stock = ¿Cuánto duran las existencias?
ask-stock-picture = Días hasta que el estante quede vacío.
ask-stock-legend = La barra es cuánto duran las existencias; la línea es cuánto tarda una entrega.
ask-stock-table = Existencias por producto
ask-days = { $n ->
    [one] { $n } día
   *[other] { $n } días
 }
stock-count = Envases de { $product } en el estante
stock-day = Día en que se contó { $product }
stock-no-day = Elija el día en que contó: hoy o antes.
stock-no-container = El sitio no dice cuánto contiene un envase.
stock-not-counted = Todavía no se ha contado
remark-log-stock-none = Cuente el estante y ponga aquí el número, para ver cuánto dura.
remark-log-stock = { $days ->
    [one] { $product } se acaba primero, en cerca de { $days } día. Es una estimación, a { $daily } por día: el promedio de los últimos 90 días, o desde el primer llenado de esos días.
   *[other] { $product } se acaba primero, en cerca de { $days } días. Es una estimación, a { $daily } por día: el promedio de los últimos 90 días, o desde el primer llenado de esos días.
 }
remark-log-stock-late = { $product } se acaba antes de que llegue una entrega pedida hoy. Pida ahora.
log-no-use = Todavía no se conoce el uso
log-products = Más de un producto
ask-drift = ¿Se corren las lecturas?
ask-drift-picture = { $n } lecturas de { $product } con su línea y su duda.
ask-drift-legend = Línea cortada: cómo cambian las lecturas. Franja: lo que puede ser la pendiente.
ask-drift-table = Lecturas por receta
ask-drift-few = Muy pocas: hacen falta { $n } a varias horas
ask-drift-no = Sin cambio claro
ask-drift-rises = Sube
ask-drift-falls = Baja
remark-log-drift-few = Hacen falta { $fewest } lecturas de una receta, a varias horas, para ver un cambio.
remark-log-drift-steady = { $product }: { $n } lecturas con un promedio de { $mean } no muestran un cambio claro. Una semana las cambia en { $week }, más o menos { $doubt }.
remark-log-drift-rises = { $product }: { $n } lecturas con un promedio de { $mean } suben { $week } por semana, más o menos { $doubt }.
remark-log-drift-falls = { $product }: { $n } lecturas con un promedio de { $mean } bajan { $week } por semana, más o menos { $doubt }.
log-too-few-readings = Muy pocas lecturas
log-mixed-readings = Lecturas de más de una receta
ask-undone = ¿Qué quedó sin hacer?
ask-undone-picture = Cuántas veces quedó sin hacer cada tarea.
ask-undone-times = { $n ->
    [one] { $n } vez
   *[other] { $n } veces
 }
ask-undone-table = Tareas del fin del turno
ask-undone-shifts = Turnos con algo sin hacer, primero el más nuevo
ask-undone-unticked = Turnos que nadie marcó, primero el más nuevo
ask-undone-more = No se listan { $n } anteriores.
remark-log-undone-unasked = No se marcó ningún turno. Turnos que nadie marcó: { $unticked }.
remark-log-undone-none = { $n ->
    [one] En { $n } turno marcado no quedó nada sin hacer. Turnos que nadie marcó: { $unticked }.
   *[other] En { $n } turnos marcados no quedó nada sin hacer. Turnos que nadie marcó: { $unticked }.
 }
remark-log-undone-part = Turnos marcados: { $n }. Marcados en parte: { $missed }. Turnos que nadie marcó: { $unticked }.
remark-log-undone = Turnos marcados: { $n }. Con algo sin hacer: { $missed }. Lo que más veces no se hizo: { $task }, { $times } de { $n }. Turnos que nadie marcó: { $unticked }.
figure-log-used = Concentrado usado
figure-log-planned = Planeado, de los llenados medidos
figure-log-measured = Medido, de los mismos llenados
figure-log-centre = Promedio
figure-log-lower = Límite inferior
figure-log-upper = Límite superior
figure-log-range = Distancia media
figure-log-range-upper = Límite de una distancia
figure-log-cost = Costo
figure-log-cost-concentrate = Concentrado
figure-log-cost-water = Agua
formula-log-share = Medido de lo planeado, de los llenados que tienen los dos.
formula-log-cost = Concentrado y agua a sus precios.
formula-log-supply = Las existencias entre el uso medio de un día.
formula-log-drift = La pendiente de la línea recta por las lecturas, para una semana.
formula-control-upper = Tres desviaciones estándar sobre el promedio, de la distancia media.
formula-control-lower = Tres por debajo de él, y no menos que nada.
formula-control-range = Lo máximo que suele ser una distancia.

## Out and in
log-out = Guardar la bitácora
log-out-hint = Una copia tiene cada registro con su huella (hash). Se abre en cualquier aparato, cuantas veces quiera: nada entra dos veces.
log-save = Guardar una copia
log-csv = Guardar una tabla
log-csv-hint = La tabla es para leerla en una hoja de cálculo. No vuelve a entrar: solo una copia lo hace.
log-in = Abrir una copia
log-open = Abrir un archivo
log-open-hint = Primero ve lo que traería. No se toma nada hasta que usted lo diga.
log-file-too-big = El archivo es más grande que cualquier bitácora. No se leyó.
log-reading-file = Se está leyendo el archivo.
log-busy-opening = Se están leyendo los llenados: { $done } de { $of }.
log-busy-reading = Se está leyendo el archivo: { $done } de { $of }.
log-busy-comparing = Se está comparando: { $done } de { $of }.
log-busy-writing = Se está escribiendo: { $done } de { $of }.
log-busy-saving = Se está haciendo el archivo: { $done } de { $of }.
log-refused = El archivo se rechazó. No se tomó nada.
log-compared = Registros en el archivo: { $records }. Nuevos: { $added }. Conocidos: { $known }.
log-file-broken = El archivo no está completo.
log-file-erases = { $n ->
    [one] { $n } texto suyo se borró allá a pedido. Se borra aquí también cuando usted toma el archivo.
   *[other] { $n } textos suyos se borraron allá a pedido. Se borran aquí también cuando usted toma el archivo.
 }
log-flaws = { $n ->
    [one] { $n } línea no es un registro y queda fuera:
   *[other] { $n } líneas no son registros y quedan fuera:
 }
log-line = Línea { $line }:
log-conflicts = { $n ->
    [one] { $n } número tiene dos registros que dicen cosas distintas. Los dos se guardan y se muestran.
   *[other] { $n } números tienen dos registros que dicen cosas distintas. Los dos se guardan y se muestran.
 }
log-stock-all = Aquí cuentan todos los llenados, elija lo que elija arriba: todas las máquinas toman del mismo estante.
log-erase-texts = Borrar sus palabras
log-file-altered = Aquí o en el archivo, estos se cambiaron después de escribirse: { $records }. Vale el que está como se escribió, y el cambiado no se toma.
log-measured-told = midió { $text }
log-conflict-table = Dos registros con un número
log-column-record = Registro
log-column-one = Uno dice
log-column-other = El otro dice
log-take = Tomar los registros nuevos
log-take-broken = Tomarlo de todos modos
log-leave = Dejarlo
log-left-out = No se tomó nada.
log-taken-mended = Ningún registro es nuevo. Lo que era distinto se corrigió con el archivo.
log-taken = { $n ->
    [one] Se tomó { $n } registro.
   *[other] Se tomaron { $n } registros.
 }
log-locked = Abrir un archivo y borrar se dejan para un aparato libre. Libere primero este en Sitio.
log-chain = ¿Está completa la bitácora?
log-chain-hint = Cada registro lleva una huella (hash) del anterior. La revisión halla un registro cambiado, omitido o movido.
log-check = Revisar todos los registros
log-check-not-yet = Sin revisar desde que se abrió la página.
log-check-running = Se está revisando: { $done } de { $of }.
log-check-whole = { $n ->
    [one] Completa: { $n } registro es correcto.
   *[other] Completa: los { $n } registros son correctos.
 }
log-broken = La cadena se rompe en el registro { $id }.
log-broken-file-do = Sus registros después de ese lugar pueden estar cambiados o faltar. Pida a quien lo guardó una copia completa antes de tomarlo.
log-broken-do = No borre nada. Guarde una copia como está, avise a su supervisor, y abra al lado una copia anterior.
log-altered = El registro no es lo que se escribió.
log-words-altered = Este texto no es lo que se escribió: { $part }.
log-words-gone = Este texto no está, y nada dice que se borró: { $part }.
log-missing = Falta el registro, y hay otros posteriores.
log-doubled = El registro está dos veces.
log-forked = Otro registro tiene el mismo número.
log-moved = El registro está en un lugar equivocado.
log-unlinked = No encaja con el registro anterior.
log-replaced = Una vez fue el último registro, y era otro.
log-heads = El final de cada cadena
log-heads-hint = Anótelos o imprímalos: muestran después si faltan registros del final, o si todo se escribió de nuevo.
log-room = Espacio en este aparato
log-room-used = El navegador usa { $used } de { $allowed } para esta página.
log-room-unknown = El navegador no dice cuánto espacio hay.
log-room-kept = El navegador la guarda hasta que usted la quite.
log-room-loose = El navegador puede quitarla cuando el aparato se llene.
log-room-refused = El navegador no aceptó. Todavía puede quitar la bitácora cuando el aparato se llene, así que guarde copias.
log-persist = Pedir al navegador que la guarde
log-records = { $n ->
    [one] { $n } registro.
   *[other] { $n } registros.
 }
log-erasing = Borrar iniciales
log-erasing-hint = Alguien puede pedir que se quiten sus iniciales. Los llenados se quedan, y la cadena sigue siendo correcta.
log-erase = Iniciales que borrar
log-erase-look = Ver cuántas hay
log-erase-looking = Se está buscando.
log-erase-none = Ningún registro nombra a { $who }.
log-erase-found = { $n ->
    [one] { $n } registro nombra a { $who }.
   *[other] { $n } registros nombran a { $who }.
 }
log-erase-class = { $n ->
    [one] { $n } resultado de clase en este aparato tiene estas iniciales y también se quita.
   *[other] { $n } resultados de clase en este aparato tienen estas iniciales y también se quitan.
 }
log-erase-class-done = Los resultados de clase ya no están en este aparato.
log-erase-warning = Borrar no se puede deshacer. No llega a las copias guardadas antes, ni a otros aparatos hasta que abran una copia nueva. Las notas de otros también pueden nombrar a alguien: abra ese llenado en la lista, y borre ahí sus palabras.
log-erase-do = Borrarlas para siempre
log-erase-leave = Conservarlas
log-erase-doing = { $n ->
    [one] Se está borrando de { $n } registro.
   *[other] Se está borrando de { $n } registros.
 }
log-erase-done = { $n ->
    [one] Se borró de { $n } registro.
   *[other] Se borró de { $n } registros.
 }
log-honest = La bitácora halla descuidos y cambios. No frena a quien puede borrar este navegador, ni a quien escribe una bitácora entera de nuevo; los finales de las cadenas, guardados en otra parte, muestran también eso.
log-long-line = El registro tiene { $text } bytes, demasiado para una línea. Acorte las notas.
log-cut-off = El archivo termina antes que este registro.
log-device = “{ $text }” no es la identificación de un aparato.
log-number = { $text } no es el número de un registro.
log-when = “{ $text }” no es una hora del día con su zona.
log-hash = “{ $text }” no es una huella (hash).
log-kind = El registro no dice qué es.
log-stray = “{ $text }” no tiene lugar en un registro de este tipo.
log-lesson = “{ $text }” de la sesión de práctica no puede ser así.
log-nobody = Una sesión de práctica en la que no participó nadie.
log-of = “{ $text }” no nombra ningún registro.
log-unknown = No hay ningún registro { $text }.
log-not-a-fill = El registro { $text } no es un llenado; solo se corrigen llenados.
log-nothing-changed = La corrección no cambia nada.
log-nothing-to-erase = El registro { $text } no tiene nada que borrar.

## On paper
log-print-hint = Elija un mes para imprimir su bitácora.
log-paper = La bitácora de este mes en papel
log-print = Imprimir esta bitácora
log-paper-title = Bitácora de { $month }
log-paper-part = Solo una parte de la bitácora:
log-paper-table = Llenados del mes
log-paper-corrected = Corregido { $when } por { $who }: { $why }
log-paper-struck = Tachado { $when } por { $who }: { $why }
log-paper-unstruck = Contado de nuevo { $when } por { $who }: { $why }
log-paper-nobody = nadie nombrado
log-paper-no-why = sin motivo dado
log-paper-totals = Totales por producto
log-assumed-in = { $n ->
    [one] { $n } llenado de los totales no se midió y se cuenta como se planeó.
   *[other] { $n } llenados de los totales no se midieron y se cuentan como se planearon.
 }
