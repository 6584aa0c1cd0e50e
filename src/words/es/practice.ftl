# Spanish, in Fluent syntax: what exercises ask, what comes of an answer. See fill.ftl for the kind of Spanish.

## Topics and levels

practice-topic-label = Leer una etiqueta
practice-topic-units = Cambiar unidades
practice-topic-dose = Dosificar un llenado
practice-topic-top-up = Completar un tanque
practice-topic-setting = Elegir un ajuste de caudal
practice-topic-shift = Planear un turno pequeño
practice-topic-mistake = Hallar el error
practice-topic-rescue = Corregir un tanque muy fuerte
practice-topic-ppe = Elegir qué ponerse
practice-topic-pairs = Lo que nunca debe juntarse
practice-topic-foam = Espuma
practice-level-first = Nivel 1
practice-level-first-is = Un paso y números fáciles. La etiqueta se explica.
practice-level-second = Nivel 2
practice-level-second-is = La etiqueta como está impresa, llenados parciales y unidades mezcladas.
practice-level-third = Nivel 3
practice-level-third-is = Un rango del que se elige. Límites de la máquina. Un resto en el tanque. Unidades imperiales.

## What is missing for a topic

practice-lack-machine = Agregue primero una máquina con su tanque.
practice-lack-label = Agregue primero un producto con una etiqueta que se pueda leer.
practice-lack-liquid = Agregue primero un producto líquido con una etiqueta que se pueda leer.
practice-lack-measure = Agregue primero una jarra, taza, tapa o bomba con su paso.
practice-lack-settings = Agregue primero una máquina con su ancho, su velocidad y dos ajustes de caudal.
practice-lack-floor = Agregue primero un piso y cuánta solución debe recibir.
practice-lack-hazards = Agregue primero un producto con los códigos de peligro de su etiqueta.
practice-lack-nothing-fits = Estos tanques, etiquetas y medidores no van juntos. Pruebe un medidor más fino.

## The parts of a task

practice-label = La etiqueta de { $product } dice “{ $label }”.
practice-measure-us = Sus oz y gal son unidades de EE. UU.
practice-measure-imperial = Sus oz y gal son unidades imperiales.
practice-aim-low = Use lo mínimo que permite la etiqueta.
practice-aim-high = Use lo máximo que permite la etiqueta.
practice-means-plus-water = Significa 1 parte de producto y esa cantidad de partes de agua.
practice-means-of-total = Significa 1 parte de producto en esa cantidad de partes de mezcla en total.
practice-means-per-water = Significa tanto producto agregado a tanta agua.
practice-means-made-up = Significa tanto producto en tanta mezcla completa.
practice-means-percent = Significa partes de producto en 100 partes de la mezcla completa.
practice-means-per-tank = Significa tanto producto para un tanque lleno.
practice-means-powder = Significa un peso de polvo para tanta mezcla.
practice-means-active = Significa partes de sustancia activa en un millón de partes de mezcla.
practice-means-packets = Significa sobres o pastillas enteros para tanta mezcla.
practice-tank = En el tanque de { $machine } caben { $tank }.
practice-machine = La máquina es { $machine }.
practice-machine-least = La máquina necesita al menos { $amount } de producto en un tanque lleno.
practice-machine-most = La máquina acepta como máximo { $amount } de producto en un tanque lleno.
practice-standard = La regla de su sitio dice “{ $rule }”.
practice-fill-full = Usted lo llena hasta arriba. Agua y producto hacen un tanque lleno.
practice-fill-part = Usted lo llena hasta { $fill }. Agua y producto llegan a esa marca.
practice-fill-on-top = Usted pone { $fill } de agua. El producto va aparte.
practice-jug = Usted mide con esto: { $measure }. Un paso es { $step }.
practice-tested = Usted hizo la prueba de agitación. No hace espuma.
practice-rest-same = Todavía hay { $left } de la misma mezcla. Tiene la fuerza correcta.
practice-rest-other = Todavía hay { $left } del mismo producto. Se mezcló con { $parts } partes de agua por 1 parte de producto.
practice-top-up-full = Usted lo llena hasta arriba.
practice-top-up-part = Usted lo llena hasta { $fill }.
practice-found = Hay { $found } de mezcla, y de ella { $poured } son producto. Eso es demasiado fuerte.
practice-floor = Este piso debe recibir de { $low } a { $high }: { $floor }.
practice-speed = Se mueve a { $speed }.
practice-path = Limpia un ancho de { $path }.
practice-path-overlap = Limpia un ancho de { $path }. Las pasadas se traslapan { $overlap }.
practice-area = Usted limpia { $area } de este piso: { $floor }. Deja { $rate }.
practice-area-plain = Usted limpia { $area } y deja { $rate }.
practice-reuse = La máquina usa otra vez { $reuse } de su mezcla.
practice-ppe = Usted vierte { $product }. Palabra de advertencia en la etiqueta: { $signal }.
practice-ppe-says = La etiqueta dice: { $statement }.
practice-ppe-codes = Los códigos de la etiqueta son { $codes }.
practice-ppe-no-codes = No hay códigos de peligro en su ficha.
practice-ppe-nothing = Nada: la etiqueta no pide nada
practice-pair = { $a } con { $b }
practice-foam-product = Cuánta espuma hace { $product }: { $class }.
practice-foam-any-product = Usted tiene un producto nuevo. Cuánta espuma hace: { $class }.
practice-foam-vacuum = { $machine } recoge con aspiradora.
practice-foam-no-vacuum = { $machine } no tiene aspiradora.
practice-foam-any-machine = Su máquina recoge con aspiradora.
practice-foam-shaken = Usted hace la prueba de agitación. Enseguida la espuma mide { $first } de alto. Después de un minuto mide { $later } de alto.
practice-foam-happens = Usted usa { $product }. El tanque se desborda de espuma.
practice-foam-happens-any = El tanque se desborda de espuma.
practice-setting-rate = Ajuste { $n }: deja { $amount }
practice-setting-flow = Ajuste { $n }: { $amount }
practice-setting-none = Ninguno de ellos
practice-ticket-water-first = Una hoja de llenado dice: primero se puso el agua.
practice-ticket-product-first = Una hoja de llenado dice: primero se puso el producto.
practice-ticket-poured = Producto vertido: { $poured }.
practice-ticket-nothing = Nada salió mal
practice-ticket-is-right = La hoja está bien.
practice-ticket-is-wrong = La hoja tiene un error.

## What is asked

practice-ask-convention = ¿Qué significa la etiqueta?
practice-ask-parts = ¿Cuántas partes tiene la mezcla completa?
practice-ask-percent = ¿Qué por ciento de la mezcla es producto? Dé tres cifras.
practice-ask-units = ¿Cuántos { $unit } son { $amount }? Dé tres cifras.
practice-ask-dose = ¿Cuánto producto vierte usted? Medio paso más o menos está bien.
practice-ask-top-up = ¿Cuánto producto agrega usted? Medio paso más o menos está bien.
practice-ask-setting = ¿Cuál es el ajuste más bajo que da al piso lo suficiente, y no demasiado?
practice-ask-solution = ¿Cuánta mezcla necesita? Dé tres cifras.
practice-ask-fills = ¿Cuántas veces llena el tanque?
practice-ask-product = ¿Cuánto producto necesita para las dos áreas? Dé tres cifras.
practice-ask-mistake = ¿Qué salió mal?
practice-ask-rescue-water = ¿Cuánta agua agrega para corregirlo? Dé tres cifras.
practice-ask-rescue-drain = No cabe toda el agua que necesita. ¿Cuánto vacía primero, para que un tanque lleno quede bien? Dé tres cifras.
practice-ask-ppe = ¿Qué necesita? Elija todo lo que corresponda.
practice-ask-pair = ¿Cuáles dos nunca deben juntarse?
practice-ask-pairs = ¿Cuáles de estos mantiene separados? Elija todos los que nunca deben juntarse, y todos donde uno no se conoce.
practice-ask-foam = ¿Qué hace usted?
practice-ask-foam-class = ¿Qué tipo de producto es?
practice-ask-foam-order = ¿Qué hace usted, y en qué orden?

## What came of it

practice-answer = Su respuesta
practice-choose = Elija primero una respuesta.
practice-above-nothing = Su respuesta debe ser más que nada. Escriba un número mayor que cero.
practice-no-try = Esto no fue un intento.
practice-as-given = Esa es la cantidad tal como se dio. Dígala en { $unit }.
practice-answer-poured = { $n ->
    [one] { $exact }; con su medidor { $poured }, { $n } paso
   *[other] { $exact }; con su medidor { $poured }, { $n } pasos
 }
practice-right = Correcto.
practice-rounded = Correcto para su medidor. Con tres cifras es { $exact }.
practice-wrong = Todavía no. Lea otra vez la tarea.
practice-step = { $what }: { $symbol } = { $equation }. Con { $given }, { $symbol } = { $result }.
practice-so = La respuesta es { $answer }.
practice-because-units = { $one } es { $many }.
practice-because-standard = La regla de su sitio queda dentro de la etiqueta. Ella decide.
practice-because-setting = Calcule cuánto deja cada ajuste. Tome el más bajo que alcanza lo mínimo que debe recibir el piso.
practice-because-rescue = El producto sigue igual. Solo crece el agua. Espere a que se mezcle y lea otra vez la fuerza.
practice-because-wear = { $piece }. La etiqueta dice { $code }: “{ $statement }”
practice-because-wear-unknown = { $piece }. No se conoce toda la etiqueta, así que el peor caso lo pide.
practice-because-nothing = Alguien leyó la etiqueta y no halló peligro. De todos modos póngase lo que pide su sitio.
practice-because-other-step = El paso más cercano es más o menos de lo que permiten las reglas. Tome el siguiente.
practice-because-no-vacuum = No hay aspiradora que pueda tragar espuma.
practice-because-little-foam = Tan poca espuma no sube hasta la aspiradora.
practice-because-unknown = No se conoce toda la etiqueta. Lo que no se sabe cuenta como el peor caso.

## Wrong roads, and what to do instead

practice-way-parts-for-total = Cerca. Usted leyó la etiqueta como partes de la mezcla completa. Ella cuenta las partes de agua. Sume 1 por el producto.
practice-way-total-for-parts = Cerca. Usted leyó la etiqueta como partes de agua. Ella cuenta la mezcla completa. El producto es una de esas partes.
practice-way-water-for-mix = Cerca. Usted tomó el agua por la mezcla completa. El producto va además del agua.
practice-way-mix-for-water = Cerca. Usted tomó la mezcla completa por agua. Una parte de ella es producto.
practice-way-other-reading = Esa es otra forma de escribirlo. Vea otra vez las palabras y los signos de la etiqueta.
practice-way-full-for-part = Eso es para un tanque lleno. Usted llena solo una parte. Tome la misma parte del producto.
practice-way-full-for-rest = Eso es para un llenado entero. El resto en el tanque ya tiene producto. Réstelo.
practice-way-ounces-for-millilitres = Usted escribió onzas como mL. Vea la unidad de su medidor. Una onza líquida (fl oz) de EE. UU. es cerca de 30 mL.
practice-way-millilitres-for-ounces = Usted escribió mL como onzas. Vea la unidad de su medidor. Una onza líquida (fl oz) de EE. UU. es cerca de 30 mL.
practice-way-us-for-imperial = Usted usó unidades de EE. UU. Estas son imperiales. Un galón imperial es una quinta parte más que uno de EE. UU.
practice-way-imperial-for-us = Usted usó unidades imperiales. Estas son de EE. UU. Un galón de EE. UU. es una sexta parte menos que uno imperial.
practice-way-weight-for-volume = Una onza de peso no es una onza líquida. Use la onza líquida para líquidos.
practice-way-upside-down = Usted fue al revés. Dele la vuelta: divida donde multiplicó.
practice-way-decimal-slip = El punto se corrió un lugar. Cuente otra vez los ceros.
practice-way-other-end = Ese es el otro extremo del rango. Vea qué extremo pide la tarea.
practice-way-machine-ignored = La máquina tiene un límite propio. Compare su número con él.
practice-way-standard-ignored = Su sitio tiene una regla para esto. Compare su número con ella.
practice-way-rest-ignored = El resto tiene otra fuerza. Calcule cuánto producto tiene y réstelo.
practice-way-end-for-added = Eso es lo que tiene al final. La tarea pide lo que agrega o vacía.
practice-way-same-again = Usted tomó otra vez lo mismo. Eso es correcto solo cuando la mezcla tiene el doble de fuerza.
practice-way-room-ignored = Esa es el agua que no cabe. Hay que sacar parte de la mezcla fuerte, y con ella sale producto.
practice-way-thousand = El dato es por mil. Divida entre 1 000.
practice-way-rounded-down = La última parte de un tanque también es un llenado. Redondee hacia arriba.
practice-way-not-whole = Se llena un número entero de veces. Redondee al siguiente entero.
practice-way-reuse-ignored = La máquina usa otra vez parte de su mezcla. Solo el resto se gasta.
practice-way-one-area-only = Eso es para un área. Sume la otra.
practice-way-mix-for-product = Eso es toda la mezcla. Solo una parte pequeña es producto.
practice-way-product-first = Primero va el agua, luego el producto. Salpica menos y hace menos espuma.
practice-way-too-dry = Eso es muy poco. La suciedad se queda en el piso. Suba.
practice-way-too-wet = Eso es demasiado. El piso queda mojado y resbaloso. Baje.
practice-way-more-than-needed = Eso serviría, pero también sirve uno más bajo. Tome el más bajo.
practice-way-none-thought = Uno de ellos sirve. Calcule cuánto deja cada uno.
practice-way-overlooked = Hay un error. Calcule la dosis y compárela con la hoja.
practice-way-false-alarm = La hoja está bien. Calcule la dosis y compárela con la hoja.
practice-way-other-mistake = Es otro error. Calcule la dosis, y vea qué descuido lleva al número de la hoja.
practice-way-no-eyes = Sus ojos están sin protección. Vea lo que dice la etiqueta de los ojos.
practice-way-no-skin = Su piel está sin protección. Vea lo que dice la etiqueta de la piel.
practice-way-no-air = Piense en el aire que respira. Vea lo que dice de él la etiqueta.
practice-way-more-than-asked = Eso es más de lo que pide la etiqueta. Aun así, su sitio puede pedirlo.
practice-way-pair-missed = Mire otra vez. Le faltó un par que nunca debe juntarse.
practice-way-unknown-cleared = Nadie sabe qué contiene uno de ellos. Lo que no se sabe se mantiene separado.
practice-way-pair-not-listed = No se conoce un choque de ese par. Aun así, nunca mezcle a propósito.
practice-way-foam-let-in = Hace espuma. No debe ir en una máquina con aspiradora.
practice-way-not-tested = Nadie lo ha probado. Hasta entonces cuenta como uno que hace espuma.
practice-way-kept-out = Eso no es lo que dicen los datos. Vea qué tan alta es la espuma, qué tan rápido baja, y si hay aspiradora.
practice-way-not-stopped = Primero pare la máquina. Todo lo demás puede esperar.
practice-way-order-mixed = El primer paso está bien. Vea el orden de los demás.
practice-way-as-given = Esa es la cantidad tal como se dio. Dígala en la unidad que pide la tarea.
practice-way-round-factor = Usted tomó un número redondo para la unidad, como 30 mL por onza. Eso sirve para estimar. Aquí cuentan tres cifras.

## What a wrong answer could do

practice-harm-over-label = Esto es más de lo que permite la etiqueta. Muy fuerte puede quemar la piel, dañar el piso y dejar una película resbalosa.
practice-harm-forbidden-pair = En el trabajo esto podría lastimar a la gente. Estos dos no deben juntarse.
practice-harm-no-eyes = En el trabajo esto podría costarle la vista. Basta una salpicadura.
practice-harm-no-skin = En el trabajo esto podría quemarle la piel.
practice-harm-no-air = En el trabajo esto podría dañarle los pulmones.
practice-harm-foam = En el trabajo la espuma podría llegar al motor de la aspiradora y parar la máquina.
practice-harm-splash = En el trabajo el producto fuerte podría salpicarle.

## Mistakes on a fill ticket

practice-made-parts-for-total = Las partes de agua se tomaron como partes de la mezcla completa
practice-made-total-for-parts = Las partes de la mezcla completa se tomaron como partes de agua
practice-made-water-for-mix = El agua se tomó por la mezcla completa
practice-made-mix-for-water = La mezcla completa se tomó por agua
practice-made-full-for-part = La dosis es para un tanque lleno
practice-made-ounces-for-millilitres = Se escribieron onzas como mL
practice-made-millilitres-for-ounces = Se escribieron mL como onzas
practice-made-us-for-imperial = Se usaron galones de EE. UU. por imperiales
practice-made-imperial-for-us = Se usaron galones imperiales por los de EE. UU.
practice-made-other-end = Se usó el extremo equivocado del rango
practice-made-machine-ignored = Se pasó por alto el límite de la máquina
practice-made-standard-ignored = Se pasó por alto la regla del sitio
practice-made-product-first = El producto se puso antes que el agua

## Sessions and their codes

practice-session-no-topic = Elija primero un tema.
practice-session-count = Ese número de tareas no sirve. Elija menos.
practice-session-lacks = Un tema no se puede hacer con sus registros. Quítelo o agregue lo que necesita.
practice-session-fewer = No hay tantas tareas distintas. Elija menos, o más temas.
practice-session-link = La sesión no cabe en un código. Elija menos temas, o repártala en papel.
practice-code-altered = Este código no está como se hizo. Revise cada letra.
practice-code-later = Este código viene de una versión más nueva. Actualice la página.
practice-code-initials = Escriba sus iniciales, cuatro letras como máximo.
practice-code-day = Escriba el día como año-mes-día.
practice-code-session = Este resultado no es de ninguna sesión.
practice-code-marks = Todavía no hay nada que entregar.
practice-class-other = Este resultado no es de esta sesión.
practice-class-twice = Este resultado ya está en la lista.
practice-class-ahead = Su día es posterior al día de este aparato. Revise los relojes de ambos.
practice-class-erased = La bitácora tiene un resultado igual, y sus iniciales se borraron a petición. Tómelo solo si esa persona lo quiere. Entonces es un registro nuevo.

## The page

practice-heading = ¿Qué haría usted?
practice-about = Tareas de sus propias máquinas, productos y pisos. Nada de lo que haga aquí cambia su sitio o su bitácora.
practice-governs = Esto es práctica. En el trabajo deciden la etiqueta, su HDS, las reglas de su sitio y la gente capacitada.
practice-parts = Qué hacer aquí
practice-practise = Practicar
practice-numbers = Ver los números
practice-hand-out = Repartir
practice-class = Resultados de la clase
practice-choose-heading = Elija qué practicar
practice-topics = Temas
practice-topics-all = Elegir todos los temas
practice-topics-none = No elegir ningún tema
practice-level = Nivel
practice-count = Cuántas tareas
practice-count-hint = Como máximo { $most }.
practice-seed = Número de la clase
practice-seed-hint = El mismo número da las mismas tareas en cada aparato con los mismos registros. Déjelo vacío para tareas nuevas.
practice-session-seed = Un número de clase tiene solo dígitos y es 4 294 967 295 como máximo.
practice-begin = Empezar
practice-stock = Hecho de
practice-made-of = { $site }: máquinas { $machines }, productos { $products }, pisos { $floors }, medidores { $measures }
practice-check-is = sesión { $check }
practice-tasks = { $n ->
    [one] { $n } tarea
   *[other] { $n } tareas
 }
practice-progress = { $n } de { $of }
practice-check = Comprobar
practice-next = Siguiente
practice-end = Ver su resultado
practice-skip = Dejar esta
practice-wrong-last = No es eso. Vea cómo se calcula.
practice-once-more = Tiene un intento más.
practice-right-is = La respuesta es: { $answer }
practice-from = Estos registros son de { $site }.
practice-stop = Parar esta sesión
practice-stop-hint = Lo que hizo en ella se pierde. Para volver después, deje simplemente la página: lo espera.
practice-leave = Parar y dejarla ir
practice-order-hint = Póngalos en orden. El primer paso va primero.
practice-up = Subir
practice-down = Bajar
practice-up-of = Subir: { $what }
practice-down-of = Bajar: { $what }
practice-drawing = Una taza con { $dose } de producto, un paso es { $step }. Al lado un tanque de { $tank } lleno hasta { $total }. La capa en el fondo del tanque es el producto, 1 parte por { $ratio } partes de agua.
practice-drawing-cup = Producto
practice-picture-ratio = Esto es 1 a { $ratio }. La capa en el fondo del tanque es todo el producto que tiene.
practice-picture-half = Un paso de su taza es { $step }. Medio paso menos da 1 a { $less }. Medio paso más da 1 a { $more }.

## See the numbers

numbers-about = Cambie un número y vea qué hace. No cambia nada más.
numbers-mix = Una proporción en un tanque
numbers-machine = Tanque de
numbers-own = Mi propio número
numbers-tank = En el tanque caben
numbers-level = Qué tan lleno está
numbers-parts = Proporción
numbers-parts-hint = Partes de agua por 1 parte de producto. Escriba 64 o 1:64.
numbers-usual = Proporciones usuales
numbers-slider = Deslice la proporción:
numbers-ratio = 1 a { $n }
numbers-measure = Medidor
numbers-step = Un paso de la taza
numbers-none = Todavía no hay imagen. Corrija el número que está marcado arriba.
numbers-to-scale = A una misma escala: el tanque y el producto, cada uno como un cubo visto de frente. La capa fina en el fondo del tanque es el mismo producto.
numbers-enlarged = Otra vez la taza, en grande, con sus pasos. La franja es medio paso hacia arriba y hacia abajo.
numbers-count = { $n ->
    [one] El paso más cercano es { $n } paso de { $step }, que son { $rounded }. Eso da 1 a { $ratio }.
   *[other] El paso más cercano son { $n } pasos de { $step }, que son { $rounded }. Eso da 1 a { $ratio }.
 }
numbers-half = Qué hace medio paso
numbers-less = Medio paso menos
numbers-asked = Como se pide
numbers-nearest = El paso más cercano
numbers-more = Medio paso más
numbers-column-pour = Usted vierte
numbers-column-product = Producto
numbers-column-ratio = Proporción
numbers-column-off = Diferencia
numbers-drawing-scale = Un tanque de { $tank } como un cubo de { $tank_edge } de ancho, lleno hasta { $total }. Al lado, los { $dose } de producto que tiene, como un cubo de { $dose_edge } de ancho. Los dos están dibujados a una misma escala.
remark-numbers-coarse = Medio paso de esta taza es tanto como todo el producto. Elija un medidor más fino o un tanque más lleno.
numbers-film = La película en un piso
numbers-laid = Cómo lo indica
numbers-laid-rate = Sé cuánto dejo en el piso
numbers-laid-setting = Por un ajuste de caudal
numbers-rate = Lo que deja en el piso
numbers-setting = Ajuste de
numbers-setting-of = { $machine }, ajuste { $n }
numbers-flow = Caudal
numbers-speed = Velocidad
numbers-path = Ancho de limpieza
numbers-overlap = Traslape
numbers-film-scale = Una loseta vista de lado, y junto a ella una hoja de papel. Hacia arriba se dibuja { $times } veces más grande que a lo ancho.
numbers-film-assumed = Esta es la película tal como queda al ponerla, pareja en todas partes. Un piso real tiene más en sus juntas y partes bajas. Se toma una hoja de papel de oficina de 0.1 mm de grueso y una loseta de 12 in o 30 cm de ancho: práctica común, sin fuente. El peso es el del agua a 20 °C, 998 g por litro.
numbers-tile-is = loseta de { $edge } de ancho
numbers-paper = papel
numbers-drawing-film = Una loseta de { $edge } de ancho vista de lado, con una película de { $thick } de grueso encima. Junto a ella una hoja de papel de { $paper } de grueso. Hacia arriba se dibuja { $times } veces más grande que a lo ancho.
figure-numbers-total = Mezcla en el tanque
figure-numbers-water = Agua que tiene
figure-numbers-dose = Producto que tiene
figure-numbers-tank-edge = Lado del tanque como cubo
figure-numbers-dose-edge = Lado del producto como cubo
figure-numbers-rate = Lo que se deja
figure-numbers-thickness = Su espesor
figure-numbers-weight = Lo que pesa
figure-numbers-tile = En una loseta
figure-numbers-sheets = Hojas de papel del mismo espesor
formula-film-mass = Peso w de la película en cada área, de lo que se deja y la densidad ρ del agua

practice-picture-tanks = La capa en el fondo es todo el producto que hay en el tanque. Donde no ve ninguna, es más fina que una línea.
practice-picture-rates = Una barra para cada ajuste, por su número. El correcto es el más bajo que termina en la franja. Ninguno es correcto cuando ninguna barra lo hace.
practice-picture-mix = Toda la mezcla para el área, como una sola tira.
practice-picture-strip = La mezcla de la primera área a la última. Donde usted llena el tanque hay una línea con un número.
practice-picture-range = Lo que permite la etiqueta, de nada a más. Una línea cortada es lo que pide la tarea.
practice-picture-range-parts = Es 1 parte de producto y { $n } partes de agua, { $all } partes en total.
practice-picture-scales = Los dos lados muestran la misma cantidad.
practice-picture-wear = De qué advierte la etiqueta, y qué se pone usted contra eso.
practice-picture-shaken = Es poca espuma si después de un minuto llega a la línea cortada o menos, y ha bajado a una tercera parte o menos. Práctica común, sin fuente.
practice-picture-foam = La espuma no debe entrar en una aspiradora. Pruebe lo que nadie ha probado.
practice-state-before = antes
practice-state-topped = completado
practice-state-found = como se halló
practice-state-drained = vaciado
practice-state-rescued = corregido
practice-drawing-state = { $when }: { $mix } con { $product } de producto
practice-drawing-tanks = Un tanque de { $tank }, paso a paso. { $states }.
practice-drawing-mix = Una tira de { $total } de mezcla para un área.
practice-drawing-strip = { $n ->
    [one] Una tira de { $total } de mezcla, por área: { $areas }. Hace falta { $n } llenado del tanque.
   *[other] Una tira de { $total } de mezcla, por área: { $areas }. Hacen falta { $n } llenados del tanque.
 }
practice-drawing-range = Una barra de lo que permite la etiqueta: { $range }.
practice-drawing-range-asked = Una barra de lo que permite la etiqueta: { $range }. La tarea pide { $asked }.
practice-drawing-scales = Una línea con dos escalas: { $from } arriba es { $to } abajo.
practice-drawing-bottles = Dos botellas con una barra en medio: { $a } y { $b }.
practice-drawing-shaken = Dos botellas después de agitar. Enseguida la espuma mide { $first } de alto, después de un minuto { $later }. Hay una línea cortada en { $limit }.
practice-drawing-foam-none = Un tanque sin espuma.
practice-drawing-foam-no-vacuum = Un tanque que puede hacer espuma, y ninguna aspiradora encima.
practice-drawing-foam-unknown = Un tanque que quizás haga espuma. La manguera encima lleva al motor de la aspiradora.
practice-drawing-foam-vacuum = Un tanque lleno de espuma. La espuma sube por la manguera al motor de la aspiradora.
practice-foam-at-once = enseguida
practice-foam-after = después de 1 min
practice-foam-motor = motor
practice-foam-tank = tanque
practice-ticket-should = Aquí debería decir: { $line }

## The result

practice-result = Su resultado
practice-tries-first = Bien al primer intento: { $n } de { $of }
practice-tries-second = Bien al segundo intento: { $n } de { $of }
practice-tries-later = Bien después: { $n } de { $of }
practice-tries-never = No logradas: { $n } de { $of }
practice-tries-open = Dejadas: { $n } de { $of }
practice-roads = Qué ver otra vez
practice-hand-in = Entregarlo
practice-initials = Sus iniciales
practice-initials-hint = Solo si entrega su resultado. Cuatro letras como máximo, sin nombre completo.
practice-code = Su código
practice-code-qr = Código de su resultado, para escanear
practice-code-save = Guardar el código como archivo
practice-code-holds = El código contiene sus iniciales, el día ({ $date }) y qué salió de cada tarea. No se envía nada. Muéstrelo o páselo usted mismo.
practice-finish = Listo. Elegir tareas nuevas
practice-copy = Copiar
practice-copied = Copiado.
practice-marked = Está marcado. Cópielo con su teclado.

## A session that a link brings

practice-offer = Una sesión para usted
practice-offer-hint = Este enlace trae una sesión. Primero empiécela o déjela: después vuelve a estar aquí el resto de Práctica. Su propio sitio queda como está.
practice-offer-same = Usted ya empezó esta sesión. Puede seguir con ella.
practice-offer-other = Usted tiene otra sesión en curso. Si empieza esta, la otra se pierde.
practice-offer-go-on = Seguir donde estaba
practice-offer-begin = Empezar esta sesión
practice-offer-leave = Dejarla
practice-link-content = Se abre, pero lo que contiene no es una sesión.

## Handing out

practice-hand-out-heading = Repartir una sesión
practice-hand-out-hint = Elija temas y haga la sesión. Todos los que escanean su código reciben las mismas tareas, sin red.
practice-make = Repartir esta sesión
practice-given-heading = La sesión
practice-given = Qué sesión
practice-given-one = Número de clase { $seed }, { $level }, tareas: { $n } ({ $check })
practice-smaller = En un código no caben todos los registros. Esta sesión usa los primeros de cada lista.
practice-qr = Código para escanear con un teléfono: abre esta sesión
practice-scan = Escanee para abrir esta sesión. Abra antes la página una vez en cada aparato, para que funcione sin red.
practice-link = El enlace
practice-paper = La sesión en papel
practice-tasks-print = Imprimir las tareas
practice-key-print = Imprimir las respuestas
practice-both-print = Imprimir las dos
practice-paper-tasks = Tareas, número de clase { $seed }, sesión { $check }
practice-paper-key = Respuestas, número de clase { $seed }, sesión { $check }
practice-paper-key-of = { $n ->
    [one] La respuesta de { $n } tarea. También es correcto lo que se redondea a ella para el medidor.
   *[other] Las respuestas de { $n } tareas. También es correcto lo que se redondea a ellas para el medidor.
 }
practice-paper-initials = Iniciales
practice-paper-date = Fecha
practice-paper-order = Escriba 1, 2, 3 y así en las casillas.

## What a class did

class-heading = Tomar los códigos de su clase
class-codes = Códigos, uno por línea
class-codes-hint = Pegue lo que su gente le envió o escaneó para usted.
class-take = Tomar estos códigos
class-take-sure = Tomar de todos modos lo que se preguntó
class-open = O abrir un archivo de códigos
class-open-hint = Un archivo de texto con un código por línea.
class-no-session = Todavía no hay una sesión. Reparta primero una: sus resultados son de ella.
class-taken = { $n ->
    [one] Se tomó { $n } código.
   *[other] Se tomaron { $n } códigos.
 }
class-refused = { $n ->
    [one] { $n } línea no se tomó:
   *[other] { $n } líneas no se tomaron:
 }
class-summary = Lo que hizo la clase
class-none = Todavía no hay resultados de esta sesión.
class-by-topic = Por tema
class-by-person = { $n ->
    [one] Por persona: { $n } persona. Cuenta el último resultado.
   *[other] Por persona: { $n } personas. Cuenta el último resultado.
 }
class-roads = Los errores usuales
class-no-roads = Nadie cometió uno de los errores usuales.
class-column-topic = Tema
class-column-asked = Respuestas
class-column-first = Al primer intento
class-column-second = Segundo intento
class-column-right = Bien
class-column-share = Parte bien
class-column-who = Iniciales
class-column-date = Fecha
class-column-wrong = No lograda
class-column-open = Dejada
class-column-times = Veces
class-column-way = Qué enseñar
class-column-level = Nivel
class-column-until = Vale hasta
class-shown = Quién ha demostrado qué
class-shown-hint = Un tema cuenta cuando todas sus tareas salieron bien, al primer o segundo intento, en la última sesión que lo pidió. Es una costumbre de quienes enseñan, no una regla con fuente. No es una licencia: usted dice quién puede trabajar solo. A las personas se las distingue solo por sus iniciales.
class-months = Cuántos meses vale
class-months-wrong = Hasta entonces no se muestra un final.
class-until-unknown = No se sabe
class-lost = Perdido el { $day } por una respuesta equivocada
class-ran-out = Venció. Su último día fue el { $day }
class-shown-by = Demostrado por { $who }
class-shown-nothing = { $who } todavía no ha demostrado ningún tema completo.
class-remove-warning = Resultados de { $who } en la bitácora: { $n }. Las iniciales se borran de ellos para siempre; lo que se demostró se queda y no es de nadie.
class-remove-do = Borrar y quitar
class-remove-leave = Dejar todo como está
class-logged = En la bitácora: { $n }. Todavía no en la bitácora: { $new }.
class-log = Escribir estos resultados en la bitácora
class-log-hint = En la bitácora un resultado se guarda para siempre, con su día y hasta cuándo vale, y va con las copias. También ahí se pueden borrar las iniciales.
class-remove = Quitar todo lo de { $who } de este aparato y de la bitácora
class-keeping = Lo que se queda en este aparato
class-keeping-hint = Los resultados se van cuando cierra la página, a menos que los guarde. Los códigos no son parte de la bitácora ni de ninguna copia; lo que usted escribe en la bitácora sí. Lo que quita de este aparato desaparece de él. Las copias que guardó o pasó a otros se quedan donde están.
class-keep = Guardar los resultados en este aparato
class-kept = Los resultados se guardan en este aparato.
class-not-kept = Los resultados no se guardan.
class-save = Guardar todos los códigos como archivo
class-erase = Quitar todos los resultados de este aparato
class-remove-codes = Todos los resultados de { $who } se quitan de este dispositivo. Lo que hicieron otros se queda.
class-remove-off = Quitarlos
class-erase-warning = { $n ->
    [one] Se quita un resultado de este dispositivo. Lo que usted escribió en el registro se queda allí, y también los archivos que guardó.
   *[other] Se quitan { $n } resultados de este dispositivo. Lo que usted escribió en el registro se queda allí, y también los archivos que guardó.
 }
class-erase-do = Quitar todos
class-erase-leave = Dejarlos aquí
class-gone = Ya no están en este dispositivo. Puede recuperarlos hasta que salga de esta parte.
class-put-back = Recuperarlos

## The first fill, step by step

first-fill = Su primer llenado
first-fill-about = Una guía lo lleva por un llenado en esta página. Le muestra cada paso donde lo hará en el trabajo.
first-fill-safe = La guía no llena ningún campo y no registra nada. Solo cuenta lo que hace usted mismo. Puede saltarse cualquier paso, y parar cuando quiera.
first-fill-begin = Empezar su primer llenado
first-fill-again = Recorrerlo una vez más
first-fill-resume = Seguir con el paso { $n }
first-fill-runs = Está en curso. Usted va en el paso { $n } de { $of }.
first-fill-link = ¿Es nuevo en esto? Deje que una guía lo lleve por su primer llenado.
first-fill-link-resume = Seguir con su primer llenado, paso { $n }
first-fill-at = Primer llenado, paso { $n } de { $of }
first-fill-told = { $at }: { $title }. { $standing }
first-fill-is-done = Hecho
first-fill-not-done = Por hacer
first-fill-is-warned = Hecho, con una advertencia
first-fill-warned = Hecho, con una advertencia: { $warning }
first-fill-stopped = Aún no está hecho. Llenado le advierte: { $warning }
first-fill-escape = Para volver aquí, pulse la línea de arriba o la tecla Escape.
first-fill-to = Llevarme a “{ $control }”
first-fill-next = Paso siguiente
first-fill-finish = Terminar
first-fill-skip = Saltar este paso
first-fill-back = Atrás
first-fill-pause = Dejarlo por ahora
first-fill-close = Parar la guía
first-fill-put-away = Cerrar
first-fill-ended = Ese fue su primer llenado
first-fill-ended-all = Usted hizo todos los pasos. En el trabajo, pida a alguien que sabe que vea sus primeros llenados.
first-fill-ended-skipped = Usted se saltó estos pasos. Vuelva a ellos, o pida a alguien que se los muestre.
first-fill-ended-governs = Deciden la etiqueta, su HDS, las reglas de su sitio y la gente capacitada.

first-fill-wear = Póngase lo que pide la etiqueta
first-fill-wear-do = Hágalo antes de abrir una botella. Una salpicadura puede lastimarle los ojos y la piel enseguida. La página dice qué ponerse en “{ $control }”. Deciden la etiqueta y la HDS.
first-fill-wear-list = Para { $product } póngase esto: { $wear }
first-fill-wear-none = Ningún código de peligro de { $product } le pide ponerse algo. Siga su etiqueta, su HDS y las reglas de su sitio.
first-fill-wear-unknown = La página no conoce todos los peligros de { $product }. Lea su etiqueta y su HDS, o pregunte.
first-fill-wear-on = Ya lo tengo puesto
first-fill-wear-read = Ya leí la etiqueta
first-fill-wear-again = Usted se preparó para otra etiqueta. Vea otra vez el paso 1 para esta.
first-fill-wear-again-go = Mostrar el paso 1
first-fill-wear-lacks = Todavía no hay un producto. Elija uno en el paso 3, y luego vuelva.
first-fill-wear-open = Marque la casilla cuando esté listo.
first-fill-wear-done = Está listo para { $product }.

first-fill-machine = Elija su máquina
first-fill-machine-do = Vea la máquina que tiene al lado. Elíjala en “{ $control }”. La página necesita su tanque para saber cuánta agua se pone.
first-fill-machine-lacks = La página no sabe cuánto cabe en el tanque. Búsquelo en su placa o en su manual, o pregunte.
first-fill-machine-done = La página tiene { $machine }, con un tanque de { $tank }. ¿Es la suya? Si no, elija otra.

first-fill-product = Elija el producto y lea su etiqueta
first-fill-product-do = Tome la botella en la mano. Elija el mismo nombre en “Producto”. Luego compare “Dilución en la etiqueta” con la etiqueta. Las dos deben decir lo mismo.
first-fill-product-locked = Aquí el piso y su norma deciden el producto. Tome esa botella en la mano. Revise que su nombre sea el de esta página. Si no lo es, pregunte antes de verter.
first-fill-product-lacks = La página todavía no puede leer esta etiqueta. Vaya a “Dilución en la etiqueta” y vea qué dice ahí.
first-fill-product-done = La página tiene { $product }, con “{ $label }” en la etiqueta. ¿Es lo que dice su botella?

first-fill-floor = Elija el piso y vea su regla
first-fill-floor-do = Elija el piso que va a limpiar. Algunos productos dañan algunos pisos para siempre. Donde su sitio tiene una norma para él, esa regla cuenta.
first-fill-floor-locked = Elija el piso que va a limpiar. Su sitio tiene una norma para él. La página llena según esa regla y ninguna otra.
first-fill-floor-lacks = Todavía no hay un piso. Pregunte qué piso es y qué se le puede poner.
first-fill-floor-done = La página tiene { $floor }.
first-fill-floor-standard = Su norma es { $standard }.
first-fill-floor-no-standard = No hay una norma vigente para este producto en él. Decide la etiqueta.

first-fill-level = Qué tan lleno, y con qué mide
first-fill-level-do = Haga solo lo que necesita. Ponga el nivel en “Llenar el tanque hasta”. Luego elija en “Medidor en la pared” la jarra o bomba que cuelga junto a su llave de agua.
first-fill-level-lacks = La página todavía no puede leer el nivel o el medidor. Debajo del campo dice por qué.
first-fill-level-done = Usted llena hasta { $level }. Su medidor es este: { $measure }. ¿Es así?

first-fill-amount = Lea la cantidad
first-fill-amount-do = Esto es cuánto producto va en este llenado. Léalo en voz alta, con su unidad. Nunca adivine, y nunca agregue un poco más por si acaso.
first-fill-amount-is = Su cantidad es { $amount }.
first-fill-amount-lacks = Todavía no hay una cantidad. La página dice qué falta, en el lugar de la cantidad.
first-fill-amount-stopped = En el lugar de la cantidad hay una advertencia. Léala y haga lo que dice.
first-fill-amount-open = Ahora diga por qué primero va el agua.
first-fill-amount-done = Tiene la cantidad, y sabe por qué primero va el agua.
first-fill-why = Cuando vierte a mano, ¿por qué va primero el agua?
first-fill-why-cheaper = Así el producto cuesta menos.
first-fill-why-splash = Hace menos espuma y salpica menos.
first-fill-why-same = Da lo mismo.
first-fill-why-right = Correcto. El agua que cae sobre el producto hace espuma y puede salpicarle la cara. También el ácido va en el agua, nunca el agua en el ácido.
first-fill-why-wrong = No del todo. Piense en agua que cae con fuerza sobre producto fuerte. Elija otra vez.

first-fill-record = Registre el llenado
first-fill-record-do = En el trabajo pulse “{ $control }” cuando el tanque esté lleno. Así el turno siguiente sabe qué contiene.
first-fill-record-training = ¿Esto es solo para aprender? Entonces salte este paso. Un registro entra en la bitácora real y se queda ahí. Después puede marcarlo como escrito por error, pero todavía se ve.
first-fill-record-lacks = Todavía no hay una cantidad que registrar.
first-fill-record-stopped = Una advertencia lo impide, así que aquí no se puede registrar nada.
first-fill-record-open = No se ha registrado nada desde que empezó.
first-fill-record-done = Su llenado está en la bitácora.

first-fill-shift = Al fin del turno
first-fill-shift-do = El agua sucia que se queda en un tanque huele mal y cría gérmenes. Haga estas cinco cosas cada vez, en este orden. Luego márquelas en “{ $control }” en Bitácora.
first-fill-shift-drain = Vacíe los dos tanques donde se puede echar el agua sucia.
first-fill-shift-rinse = Enjuáguelos con agua limpia.
first-fill-shift-filters = Limpie los filtros, para que la aspiradora reciba aire.
first-fill-shift-brush = Limpie la bolsa de basura o el cepillo.
first-fill-shift-squeegee = Limpie el escurridor, para que no deje rayas.
first-fill-shift-lacks = Hoy no hay ningún llenado de esta máquina en la bitácora, así que no hay nada que marcar. Lea las cinco cosas.
first-fill-shift-open = Todavía por hacer: { $tasks }.
first-fill-shift-done = Las cinco están marcadas.
