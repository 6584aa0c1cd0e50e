# Portuguese (Brazil), in Fluent syntax: what exercises ask, what comes of an answer, and the guide through a first
# fill. See fill.ftl for the kind of Portuguese. No native reader has checked this file yet.

## Topics and levels

practice-topic-label = Ler um rótulo
practice-topic-units = Trocar unidades
practice-topic-dose = Achar a dose
practice-topic-top-up = Completar o tanque
practice-topic-setting = Escolher uma regulagem
practice-topic-shift = Planejar um turno curto
practice-topic-mistake = Achar o erro
practice-topic-rescue = Corrigir um tanque forte demais
practice-topic-ppe = Escolher o que usar
practice-topic-pairs = O que nunca pode se misturar
practice-topic-foam = Espuma
practice-level-first = Nível 1
practice-level-first-is = Um passo e números fáceis. O rótulo é explicado.
practice-level-second = Nível 2
practice-level-second-is = O rótulo como impresso, enchimentos parciais e unidades misturadas.
practice-level-third = Nível 3
practice-level-third-is = Uma faixa para escolher. Limites da máquina. Uma sobra no tanque. Unidades imperiais.

## What is missing for a topic

practice-lack-machine = Acrescente antes uma máquina com o tanque dela.
practice-lack-label = Acrescente antes um produto com um rótulo que se possa ler.
practice-lack-liquid = Acrescente antes um produto líquido com um rótulo que se possa ler.
practice-lack-measure = Acrescente antes uma jarra, um copo, uma tampa ou uma bomba com o seu passo.
practice-lack-settings = Acrescente antes uma máquina com a largura de limpeza, a velocidade e duas regulagens de vazão.
practice-lack-floor = Acrescente antes um piso e quanta solução ele deve receber.
practice-lack-hazards = Acrescente antes um produto com os códigos de perigo do rótulo dele.
practice-lack-nothing-fits = Estes tanques, rótulos e medidas não combinam. Tente uma medida mais precisa.

## The parts of a task

practice-label = O rótulo de { $product } diz “{ $label }”.
practice-measure-us = Nele, oz e gal são unidades dos EUA.
practice-measure-imperial = Nele, oz e gal são unidades imperiais.
practice-aim-low = Use o mínimo que o rótulo permite.
practice-aim-high = Use o máximo que o rótulo permite.
practice-means-plus-water = Quer dizer 1 parte de produto mais esse número de partes de água.
practice-means-of-total = Quer dizer 1 parte de produto dentro desse número de partes da mistura toda.
practice-means-per-water = Quer dizer uma certa quantidade de produto juntada a uma certa quantidade de água.
practice-means-made-up = Quer dizer uma certa quantidade de produto dentro de uma certa quantidade da mistura toda.
practice-means-percent = Quer dizer partes de produto em 100 partes da mistura toda.
practice-means-per-tank = Quer dizer uma certa quantidade de produto para um tanque cheio.
practice-means-powder = Quer dizer um peso de pó para uma certa quantidade de mistura.
practice-means-active = Quer dizer partes de substância ativa em um milhão de partes de mistura.
practice-means-packets = Quer dizer sachês ou pastilhas inteiros para uma certa quantidade de mistura.
practice-tank = No tanque de { $machine } cabem { $tank }.
practice-machine = A máquina é { $machine }.
practice-machine-least = A máquina precisa de pelo menos { $amount } de produto em um tanque cheio.
practice-machine-most = A máquina aceita no máximo { $amount } de produto em um tanque cheio.
practice-standard = A regra do seu local diz “{ $rule }”.
practice-fill-full = Você o enche até em cima. Água e produto fazem um tanque cheio.
practice-fill-part = Você o enche até { $fill }. Água e produto chegam a essa marca.
practice-fill-on-top = Você põe { $fill } de água. O produto vai por cima disso.
practice-jug = Você mede com isto: { $measure }. Um passo (marca, bombada ou tampa) é { $step }.
practice-tested = Você fez o teste de agitar. Não faz espuma.
practice-rest-same = Ainda há { $left } da mesma mistura nele. A concentração dela está certa.
practice-rest-other = Ainda há { $left } do mesmo produto nele. Isso foi misturado com { $parts } partes de água para 1 parte de produto.
practice-top-up-full = Você o completa até em cima.
practice-top-up-part = Você o completa até { $fill }.
practice-found = Há { $found } de mistura nele, e { $poured } disso é produto. É forte demais.
practice-floor = Este piso deve receber { $low } a { $high }: { $floor }.
practice-speed = Ela anda a { $speed }.
practice-path = A largura de limpeza é { $path }.
practice-path-overlap = A largura de limpeza é { $path }. A sobreposição das passadas é { $overlap }.
practice-area = Você limpa { $area } deste piso: { $floor }. Você põe no piso { $rate }.
practice-area-plain = Você limpa { $area } e põe no piso { $rate }.
practice-reuse = A máquina usa de novo { $reuse } da sua mistura.
practice-ppe = Você despeja { $product }. Palavra de advertência no rótulo: { $signal }.
practice-ppe-says = O rótulo diz: { $statement }.
practice-ppe-codes = Os códigos no rótulo são { $codes }.
practice-ppe-no-codes = Não há códigos de perigo na ficha dele.
practice-ppe-nothing = Nada: o rótulo não pede nada
practice-pair = { $a } com { $b }
practice-foam-product = Espuma de { $product }: { $class }.
practice-foam-any-product = Você tem um produto novo. Espuma: { $class }.
practice-foam-vacuum = { $machine } recolhe por aspiração.
practice-foam-no-vacuum = { $machine } não tem aspiração.
practice-foam-any-machine = A sua máquina recolhe por aspiração.
practice-foam-shaken = Você faz o teste de agitar. Na hora a espuma tem { $first } de altura. Depois de um minuto ela tem { $later } de altura.
practice-foam-happens = Você usa { $product }. O tanque transborda de espuma.
practice-foam-happens-any = O tanque transborda de espuma.
practice-setting-rate = Regulagem { $n }: põe no piso { $amount }
practice-setting-flow = Regulagem { $n }: { $amount }
practice-setting-none = Nenhuma delas
practice-ticket-water-first = Uma ficha de enchimento diz: primeiro foi posta a água.
practice-ticket-product-first = Uma ficha de enchimento diz: primeiro foi posto o produto.
practice-ticket-poured = Produto despejado: { $poured }.
practice-ticket-nothing = Nada deu errado
practice-ticket-is-right = A ficha está certa.
practice-ticket-is-wrong = A ficha tem um erro.

## What is asked

practice-ask-convention = O que o rótulo quer dizer?
practice-ask-parts = Quantas partes tem a mistura toda?
practice-ask-percent = Quantos por cento da mistura são produto? Dê três algarismos.
practice-ask-units = Quanto é { $amount } em { $unit }? Dê três algarismos.
practice-ask-dose = Quanto produto você despeja? Meio passo a mais ou a menos serve.
practice-ask-top-up = Quanto produto você junta? Meio passo a mais ou a menos serve.
practice-ask-setting = Qual é a regulagem mais baixa que dá ao piso o bastante, e não demais?
practice-ask-solution = De quanta mistura você precisa? Dê três algarismos.
practice-ask-fills = Quantas vezes você enche o tanque?
practice-ask-product = De quanto produto você precisa para as duas áreas? Dê três algarismos.
practice-ask-mistake = O que deu errado?
practice-ask-rescue-water = Quanta água você junta para ficar certo? Dê três algarismos.
practice-ask-rescue-drain = Não há lugar para toda a água de que ele precisa. Quanto você drena antes, para que um tanque cheio fique certo? Dê três algarismos.
practice-ask-ppe = Do que você precisa? Escolha tudo o que se aplica.
practice-ask-pair = Quais dois nunca podem se misturar?
practice-ask-pairs = Quais destes você mantém separados? Escolha todos os que nunca podem se misturar, e todos em que um não é conhecido.
practice-ask-foam = O que você faz?
practice-ask-foam-class = Que tipo de produto é?
practice-ask-foam-order = O que você faz, e em que ordem?

## What came of it

practice-answer = A sua resposta
practice-choose = Escolha antes uma resposta.
practice-above-nothing = A sua resposta tem de ser mais que nada. Digite um número acima de zero.
practice-no-try = Isto não contou como tentativa.
practice-as-given = Essa é a quantidade como foi dada. Diga em { $unit }.
practice-answer-poured = { $n ->
    [one] { $exact }; com a sua medida { $poured }, { $n } passo
   *[other] { $exact }; com a sua medida { $poured }, { $n } passos
 }
practice-right = Certo.
practice-rounded = Certo para a sua medida. Com três algarismos é { $exact }.
practice-wrong = Ainda não. Leia a tarefa de novo.
practice-step = { $what }: { $symbol } = { $equation }. Com { $given }, { $symbol } = { $result }.
practice-so = A resposta é { $answer }.
practice-because-units = { $one } é igual a { $many }.
practice-because-standard = A regra do seu local fica dentro do rótulo. Vale a regra.
practice-because-setting = Calcule quanto cada regulagem põe no piso. Pegue a mais baixa que chega ao mínimo que o piso deve receber.
practice-because-rescue = O produto fica igual. Só a água aumenta. Espere até estar misturado, depois leia a concentração de novo.
practice-because-wear = { $piece }. O rótulo traz { $code }: “{ $statement }”
practice-because-wear-unknown = { $piece }. Nem tudo do rótulo é conhecido, então o pior caso pede isto.
practice-because-nothing = Alguém leu o rótulo e não achou perigo. Mesmo assim, use o que o seu local pede.
practice-because-other-step = O passo mais próximo é mais ou menos do que as regras permitem. Pegue o seguinte.
practice-because-no-vacuum = Não há aspiração que possa puxar espuma.
practice-because-little-foam = Tão pouca espuma não sobe até a aspiração.
practice-because-unknown = Nem todo o rótulo é conhecido. O que não se sabe conta como o pior caso.

## Wrong roads, and what to do instead

practice-way-parts-for-total = Quase. Você leu o rótulo como partes da mistura toda. Ele conta as partes de água. Some 1 pelo produto.
practice-way-total-for-parts = Quase. Você leu o rótulo como partes de água. Ele conta a mistura toda. O produto é uma dessas partes.
practice-way-water-for-mix = Quase. Você tomou a água pela mistura toda. O produto se soma à água.
practice-way-mix-for-water = Quase. Você tomou a mistura toda por água. Uma parte dela é produto.
practice-way-other-reading = Essa é outra maneira de escrever. Olhe de novo as palavras e os sinais do rótulo.
practice-way-full-for-part = Isso é para um tanque cheio. Você enche só uma parte. Pegue a mesma parte do produto.
practice-way-full-for-rest = Isso é para um enchimento inteiro. A sobra no tanque já tem produto. Desconte.
practice-way-ounces-for-millilitres = Você escreveu onças como mL. Olhe a unidade da sua medida. Uma fl oz dos EUA é cerca de 30 mL.
practice-way-millilitres-for-ounces = Você escreveu mL como onças. Olhe a unidade da sua medida. Uma fl oz dos EUA é cerca de 30 mL.
practice-way-us-for-imperial = Você usou unidades dos EUA. Estas são imperiais. Um galão imperial é um quinto a mais que um dos EUA.
practice-way-imperial-for-us = Você usou unidades imperiais. Estas são dos EUA. Um galão dos EUA é um sexto a menos que um imperial.
practice-way-weight-for-volume = Uma onça de peso não é uma onça fluida. Use a onça fluida para líquidos.
practice-way-upside-down = Você fez ao contrário. Inverta: divida onde multiplicou.
practice-way-decimal-slip = A vírgula andou uma casa. Conte os zeros de novo.
practice-way-other-end = Essa é a outra ponta da faixa. Olhe que ponta a tarefa pede.
practice-way-machine-ignored = A máquina tem o seu próprio limite. Compare o seu número com ele.
practice-way-standard-ignored = O seu local tem uma regra para isto. Compare o seu número com ela.
practice-way-rest-ignored = A sobra tem outra concentração. Calcule quanto produto há nela e desconte.
practice-way-end-for-added = Isso é o que você tem no fim. A tarefa pede o que você junta ou drena.
practice-way-same-again = Você pegou a mesma quantidade de novo. Isso só está certo quando a concentração é o dobro da certa.
practice-way-room-ignored = Essa é a água que não cabe. Parte da mistura forte tem de sair, e com ela sai produto.
practice-way-thousand = A quantidade é para mil. Divida por 1 000.
practice-way-rounded-down = A última parte de um tanque também é um enchimento. Arredonde para cima.
practice-way-not-whole = O tanque se enche um número inteiro de vezes. Arredonde para o próximo inteiro.
practice-way-reuse-ignored = A máquina usa de novo parte da mistura. Só o resto é gasto.
practice-way-one-area-only = Isso é para uma área. Some a outra.
practice-way-mix-for-product = Isso é a mistura toda. Só uma parte pequena dela é produto.
practice-way-product-first = Primeiro vai a água, depois o produto. Respinga menos e faz menos espuma.
practice-way-too-dry = Isso é pouco demais. A sujeira fica no piso. Vá para uma mais alta.
practice-way-too-wet = Isso é demais. O piso fica molhado e escorregadio. Vá para uma mais baixa.
practice-way-more-than-needed = Essa serviria, mas uma mais baixa também serve. Pegue a mais baixa.
practice-way-none-thought = Uma delas serve. Calcule quanto cada uma põe no piso.
practice-way-overlooked = Há um erro. Calcule a dose e compare com a ficha.
practice-way-false-alarm = A ficha está certa. Calcule a dose e compare com a ficha.
practice-way-other-mistake = É outro erro. Calcule a dose, depois veja que descuido leva ao número da ficha.
practice-way-no-eyes = Os seus olhos estão sem proteção. Olhe o que o rótulo diz dos olhos.
practice-way-no-skin = A sua pele está sem proteção. Olhe o que o rótulo diz da pele.
practice-way-no-air = Pense no ar que você respira. Olhe o que o rótulo diz dele.
practice-way-more-than-asked = Isso é mais do que o rótulo pede. Mesmo assim, o seu local pode pedir.
practice-way-pair-missed = Olhe de novo. Você deixou de fora um par que nunca pode se misturar.
practice-way-unknown-cleared = Ninguém sabe o que há em um deles. O que não se sabe fica separado.
practice-way-pair-not-listed = Não se conhece incompatibilidade nesse par. Mesmo assim, nunca misture de propósito.
practice-way-foam-let-in = Faz espuma. Não pode ir em uma máquina com aspiração.
practice-way-not-tested = Ninguém testou. Até lá conta como espumante.
practice-way-kept-out = Não é o que dizem os fatos. Olhe a altura da espuma, a rapidez com que ela baixa, e se há aspiração.
practice-way-not-stopped = Pare antes a máquina. Todo o resto pode esperar.
practice-way-order-mixed = O primeiro passo está certo. Olhe a ordem dos outros.
practice-way-as-given = Essa é a quantidade como foi dada. Diga na unidade que a tarefa pede.
practice-way-round-factor = Você pegou um número redondo para a unidade, como 30 mL para uma onça. Isso basta para uma estimativa. Aqui contam três algarismos.

## What a wrong answer could do

practice-harm-over-label = Isto é mais do que o rótulo permite. Forte demais pode queimar a pele, estragar o piso e deixar uma película escorregadia.
practice-harm-forbidden-pair = No trabalho isto poderia ferir pessoas. Estes dois não podem se misturar.
practice-harm-no-eyes = No trabalho isto poderia custar a sua visão. Basta um respingo.
practice-harm-no-skin = No trabalho isto poderia queimar a sua pele.
practice-harm-no-air = No trabalho isto poderia fazer mal aos seus pulmões.
practice-harm-foam = No trabalho a espuma poderia chegar ao motor de aspiração e parar a máquina.
practice-harm-splash = No trabalho o produto forte poderia respingar em você.

## Mistakes on a fill ticket

practice-made-parts-for-total = As partes de água foram tomadas por partes da mistura toda
practice-made-total-for-parts = As partes da mistura toda foram tomadas por partes de água
practice-made-water-for-mix = A água foi tomada pela mistura toda
practice-made-mix-for-water = A mistura toda foi tomada por água
practice-made-full-for-part = A dose é para um tanque cheio
practice-made-ounces-for-millilitres = Onças foram escritas como mL
practice-made-millilitres-for-ounces = mL foram escritos como onças
practice-made-us-for-imperial = Foram usados galões dos EUA no lugar dos imperiais
practice-made-imperial-for-us = Foram usados galões imperiais no lugar dos dos EUA
practice-made-other-end = Foi usada a ponta errada da faixa
practice-made-machine-ignored = O limite da máquina foi deixado de lado
practice-made-standard-ignored = A regra do local foi deixada de lado
practice-made-product-first = O produto foi posto antes da água

## Sessions and their codes

practice-session-no-topic = Escolha antes um tema.
practice-session-count = Esse número de tarefas não cabe. Escolha menos.
practice-session-lacks = Um tema não pode ser feito com os seus cadastros. Remova esse tema ou acrescente o que falta.
practice-session-fewer = Não há tantas tarefas diferentes. Escolha menos, ou mais temas.
practice-session-link = A sessão não cabe em um código. Escolha menos temas, ou distribua em papel.
practice-code-altered = Este código não está como foi feito. Confira cada letra.
practice-code-later = Este código vem de uma versão mais nova. Atualize a página.
practice-code-initials = Digite as suas iniciais, no máximo quatro letras.
practice-code-day = Digite o dia como ano-mês-dia.
practice-code-session = Este resultado não é de nenhuma sessão.
practice-code-marks = Ainda não há nada para entregar.
practice-class-other = Este resultado não é desta sessão.
practice-class-twice = Este resultado já está na lista.
practice-class-ahead = O dia dele é posterior ao dia deste aparelho. Confira os relógios dos dois.
practice-class-erased = O registro tem um resultado igual a este, e as iniciais foram apagadas a pedido. Só aceite se essa pessoa quiser. Então ele entra como novo.

## The page

practice-heading = O que você faria?
practice-about = Tarefas das suas próprias máquinas, produtos e pisos. Nada do que você faz aqui muda o seu local ou o seu registro.
practice-governs = Isto é treino. No trabalho decidem o rótulo, a FDS, as regras do seu local e pessoas treinadas.
practice-parts = O que fazer aqui
practice-practise = Treinar
practice-numbers = Ver os números
practice-hand-out = Distribuir
practice-class = Resultado da turma
practice-choose-heading = Escolha o que treinar
practice-topics = Temas
practice-topics-all = Todos os temas
practice-topics-none = Nenhum tema
practice-level = Nível
practice-count = Quantas tarefas
practice-count-hint = No máximo { $most }.
practice-seed = Número da turma
practice-seed-hint = O mesmo número dá as mesmas tarefas em cada aparelho com os mesmos cadastros. Deixe vazio para tarefas novas.
practice-session-seed = Um número de turma só tem algarismos e é no máximo 4 294 967 295.
practice-begin = Começar
practice-stock = Feito de
practice-made-of = { $site }: máquinas { $machines }, produtos { $products }, pisos { $floors }, medidas { $measures }
practice-check-is = sessão { $check }
practice-tasks = { $n ->
    [one] { $n } tarefa
   *[other] { $n } tarefas
 }
practice-progress = { $n } de { $of }
practice-check = Conferir
practice-next = Próxima
practice-end = Ver o seu resultado
practice-skip = Pular esta
practice-wrong-last = Não é isso. Olhe como se calcula.
practice-once-more = Você tem mais uma tentativa.
practice-right-is = A resposta é: { $answer }
practice-from = Estes cadastros são de { $site }.
practice-stop = Parar esta sessão
practice-stop-hint = O que você fez nela se perde. Para voltar depois, basta sair da página: ela espera por você.
practice-leave = Parar e descartar
practice-order-hint = Ponha em ordem. O primeiro passo vem primeiro.
practice-up = Subir
practice-down = Descer
practice-up-of = Subir: { $what }
practice-down-of = Descer: { $what }
practice-drawing = Um copo com { $dose } de produto, um passo é { $step }. Ao lado um tanque de { $tank } cheio até { $total }. A camada no fundo do tanque é o produto, 1 parte para { $ratio } partes de água.
practice-drawing-cup = Produto
practice-picture-ratio = Isto é 1 para { $ratio }. A camada no fundo do tanque é todo o produto que há nele.
practice-picture-half = Um passo do seu copo é { $step }. Meio passo a menos dá 1 para { $less }. Meio passo a mais dá 1 para { $more }.

## See the numbers

numbers-about = Mude um número e veja o que ele faz. Isso não muda mais nada.
numbers-mix = Proporção em um tanque
numbers-machine = Tanque de
numbers-own = Meu próprio número
numbers-tank = No tanque cabem
numbers-level = Até onde está cheio
numbers-parts = Proporção
numbers-parts-hint = Partes de água para 1 parte de produto. Digite 64 ou 1:64.
numbers-usual = Proporções comuns
numbers-slider = Deslize a proporção:
numbers-ratio = 1 para { $n }
numbers-measure = Medida
numbers-step = Um passo do copo
numbers-none = Ainda não há desenho. Corrija o número que está marcado acima.
numbers-to-scale = Em uma só escala: o tanque e o produto, cada um como um cubo visto de frente. A camada fina no fundo do tanque é o mesmo produto.
numbers-enlarged = O copo de novo, ampliado, com os seus passos. A faixa é meio passo para cima e para baixo.
numbers-count = { $n ->
    [one] O passo mais próximo é { $n } passo de { $step }, o que dá { $rounded }. Isso faz 1 para { $ratio }.
   *[other] O mais próximo são { $n } passos de { $step }, o que dá { $rounded }. Isso faz 1 para { $ratio }.
 }
numbers-half = O que faz meio passo
numbers-less = Meio passo a menos
numbers-asked = Como pedido
numbers-nearest = O passo mais próximo
numbers-more = Meio passo a mais
numbers-column-pour = Despeje
numbers-column-product = Produto
numbers-column-ratio = Proporção
numbers-column-off = Diferença
numbers-drawing-scale = Um tanque de { $tank } como um cubo de { $tank_edge } de largura, cheio até { $total }. Ao lado o produto nele, { $dose }, como um cubo de { $dose_edge } de largura. Os dois estão desenhados em uma só escala.
remark-numbers-coarse = Meio passo deste copo é tanto quanto todo o produto. Escolha uma medida mais precisa ou um tanque mais cheio.
numbers-film = A película em um piso
numbers-laid = Como você informa
numbers-laid-rate = Sei quanto ponho no piso
numbers-laid-setting = Por uma regulagem
numbers-rate = O que você põe no piso
numbers-setting = Regulagem de
numbers-setting-of = { $machine }, regulagem { $n }
numbers-flow = Vazão
numbers-speed = Velocidade
numbers-path = Largura de limpeza
numbers-overlap = Sobreposição
numbers-film-scale = Um ladrilho visto de lado, e ao lado dele uma folha de papel. A altura está desenhada { $times } vezes maior que a largura.
numbers-film-assumed = Esta é a película como é posta, igual em toda parte. Um piso real tem mais nas juntas e nas partes baixas. Uma folha de papel de escritório foi tomada como de 0,1 mm de espessura e um ladrilho como de 12 in ou 30 cm de largura: prática comum, sem fonte. O peso é o da água a 20 °C, 998 g por litro.
numbers-tile-is = ladrilho de { $edge } de largura
numbers-paper = papel
numbers-drawing-film = Um ladrilho de { $edge } de largura visto de lado, com uma película de { $thick } de espessura em cima. Ao lado dele uma folha de papel de { $paper } de espessura. A altura está desenhada { $times } vezes maior que a largura.
figure-numbers-total = Mistura no tanque
figure-numbers-water = Água nela
figure-numbers-dose = Produto nela
figure-numbers-tank-edge = Lado do tanque como cubo
figure-numbers-dose-edge = Lado do produto como cubo
figure-numbers-rate = Posto no piso
figure-numbers-thickness = Espessura
figure-numbers-weight = Quanto pesa
figure-numbers-tile = Em um ladrilho
figure-numbers-sheets = Folhas de papel na espessura
formula-film-mass = Peso w da película em cada área, do que é posto no piso e da densidade ρ da água

practice-picture-tanks = A camada no fundo é todo o produto no tanque. Onde você não vê nenhuma, ela é mais fina que uma linha.
practice-picture-rates = Uma barra para cada regulagem, pelo número dela. A certa é a mais baixa que termina na faixa. Nenhuma está certa quando nenhuma barra faz isso.
practice-picture-mix = Toda a mistura para a área, como uma só tira.
practice-picture-strip = A mistura da primeira à última área. Uma linha com um número está onde você enche o tanque.
practice-picture-range = O que o rótulo permite, de nada a mais. Uma linha tracejada é o que a tarefa pede.
practice-picture-range-parts = Isso é 1 parte de produto e { $n } partes de água, { $all } partes ao todo.
practice-picture-scales = Os dois lados mostram a mesma quantidade.
practice-picture-wear = Do que o rótulo avisa, e o que você usa contra isso.
practice-picture-shaken = Pouca espuma: depois de um minuto está na linha tracejada ou abaixo, e baixou a um terço ou menos. Prática comum, sem fonte.
practice-picture-foam = Espuma não pode entrar na aspiração. Teste o que ninguém testou.
practice-state-before = antes
practice-state-topped = completado
practice-state-found = como achado
practice-state-drained = drenado
practice-state-rescued = corrigido
practice-drawing-state = { $when }: { $mix } com { $product } de produto
practice-drawing-tanks = Um tanque de { $tank }, passo a passo. { $states }.
practice-drawing-mix = Uma tira de { $total } de mistura para uma área.
practice-drawing-strip = { $n ->
    [one] Uma tira de { $total } de mistura, por área: { $areas }. Leva { $n } enchimento do tanque.
   *[other] Uma tira de { $total } de mistura, por área: { $areas }. Leva { $n } enchimentos do tanque.
 }
practice-drawing-range = Uma barra do que o rótulo permite: { $range }.
practice-drawing-range-asked = Uma barra do que o rótulo permite: { $range }. A tarefa pede { $asked }.
practice-drawing-scales = Uma linha com duas escalas: { $from } em cima é { $to } embaixo.
practice-drawing-bottles = Duas garrafas com uma barra entre elas: { $a } e { $b }.
practice-drawing-shaken = Duas garrafas depois de agitar. Na hora a espuma tem { $first } de altura, depois de um minuto { $later }. Há uma linha tracejada em { $limit }.
practice-drawing-foam-none = Um tanque sem espuma.
practice-drawing-foam-no-vacuum = Um tanque que pode fazer espuma, e nenhuma aspiração acima dele.
practice-drawing-foam-unknown = Um tanque que talvez faça espuma. A mangueira acima dele leva ao motor de aspiração.
practice-drawing-foam-vacuum = Um tanque cheio de espuma. A espuma sobe pela mangueira até o motor de aspiração.
practice-foam-at-once = na hora
practice-foam-after = após 1 min
practice-foam-motor = motor
practice-foam-tank = tanque
practice-ticket-should = Aqui deveria estar: { $line }

## The result

practice-result = O seu resultado
practice-tries-first = Certas de primeira: { $n } de { $of }
practice-tries-second = Certas na segunda tentativa: { $n } de { $of }
practice-tries-later = Certas depois: { $n } de { $of }
practice-tries-never = Erradas: { $n } de { $of }
practice-tries-open = Puladas: { $n } de { $of }
practice-roads = O que olhar de novo
practice-hand-in = Entregar
practice-initials = As suas iniciais
practice-initials-hint = Só se você entregar o seu resultado. No máximo quatro letras, sem nome completo.
practice-code = O seu código
practice-code-qr = Código do seu resultado, para escanear
practice-code-save = Salvar o código como arquivo
practice-code-holds = O código tem as suas iniciais, o dia ({ $date }) e o resultado de cada tarefa. Nada é enviado. Mostre ou passe você mesmo.
practice-finish = Pronto. Escolher novas tarefas
practice-copy = Copiar
practice-copied = Copiado.
practice-marked = Está marcado. Copie com o seu teclado.

## A session that a link brings

practice-offer = Uma sessão para você
practice-offer-hint = Este link traz uma sessão. Antes comece ou recuse: então o resto de Treino volta a estar aqui. O seu próprio local fica como está.
practice-offer-same = Você já começou esta sessão. Pode continuar.
practice-offer-other = Você tem outra sessão em curso. Se começar esta, a outra se perde.
practice-offer-go-on = Continuar onde estava
practice-offer-begin = Começar esta sessão
practice-offer-leave = Recusar
practice-link-content = Abre, mas o que tem dentro não é uma sessão.

## Handing out

practice-hand-out-heading = Distribuir uma sessão
practice-hand-out-hint = Escolha temas, depois faça a sessão. Quem escaneia o código dela recebe as mesmas tarefas, sem rede.
practice-make = Distribuir esta sessão
practice-given-heading = A sessão
practice-given = Qual sessão
practice-given-one = Número da turma { $seed }, { $level }, tarefas: { $n } ({ $check })
practice-smaller = Em um código não cabem todos os cadastros. Esta sessão usa os primeiros de cada lista.
practice-qr = Código para escanear com um celular: abre esta sessão
practice-scan = Escaneie para abrir esta sessão. Abra antes a página uma vez em cada aparelho, para que funcione sem rede.
practice-link = O link
practice-paper = A sessão em papel
practice-tasks-print = Imprimir as tarefas
practice-key-print = Imprimir o gabarito
practice-both-print = Imprimir os dois
practice-paper-tasks = Tarefas, número da turma { $seed }, sessão { $check }
practice-paper-key = Gabarito, número da turma { $seed }, sessão { $check }
practice-paper-key-of = { $n ->
    [one] A resposta de { $n } tarefa. O que arredonda para ela na medida também está certo.
   *[other] As respostas de { $n } tarefas. O que arredonda para elas na medida também está certo.
 }
practice-paper-initials = Iniciais
practice-paper-date = Data
practice-paper-order = Escreva 1, 2, 3 e assim por diante nas caixas.

## What a class did

class-heading = Receber os códigos da sua turma
class-codes = Códigos, um por linha
class-codes-hint = Cole o que a sua equipe enviou ou escaneou para você.
class-take = Receber estes códigos
class-take-sure = Receber mesmo assim o que foi perguntado
class-open = Ou abrir um arquivo de códigos
class-open-hint = Um arquivo de texto com um código por linha.
class-no-session = Ainda não há sessão. Distribua uma antes: os resultados são dela.
class-taken = { $n ->
    [one] { $n } código foi recebido.
   *[other] { $n } códigos foram recebidos.
 }
class-refused = { $n ->
    [one] { $n } linha não foi recebida:
   *[other] { $n } linhas não foram recebidas:
 }
class-summary = O que a turma fez
class-none = Ainda não há resultados desta sessão.
class-by-topic = Por tema
class-by-person = { $n ->
    [one] Por pessoa: { $n } pessoa. Conta o último resultado.
   *[other] Por pessoa: { $n } pessoas. Conta o último resultado.
 }
class-roads = Os erros comuns
class-no-roads = Ninguém cometeu um dos erros comuns.
class-column-topic = Tema
class-column-asked = Respostas
class-column-first = De primeira
class-column-second = Na segunda
class-column-right = Certas
class-column-share = Parte certa
class-column-who = Iniciais
class-column-date = Data
class-column-wrong = Erradas
class-column-open = Puladas
class-column-times = Vezes
class-column-way = O que ensinar
class-column-level = Nível
class-column-until = Vale até
class-shown = Quem demonstrou o quê
class-shown-hint = Um tema conta quando todas as tarefas dele estavam certas, na primeira ou na segunda tentativa, na última sessão que o pediu. Isso é um costume de quem treina, não uma regra com fonte. Não é uma licença: você diz quem pode trabalhar sem ninguém ao lado. As pessoas são distinguidas só pelas iniciais.
class-months = Quantos meses vale
class-months-wrong = Até lá nenhum prazo é mostrado.
class-until-unknown = Não se sabe
class-lost = Perdido em { $day } por uma resposta errada
class-ran-out = Venceu. O último dia foi { $day }
class-shown-by = Demonstrado por { $who }
class-shown-nothing = { $who } ainda não demonstrou nenhum tema inteiro.
class-remove-warning = Resultados de { $who } no registro: { $n }. As iniciais são apagadas deles para sempre; o que foi demonstrado fica e não é de ninguém.
class-remove-do = Apagar e retirar
class-remove-leave = Deixar tudo como está
class-logged = No registro: { $n }. Ainda não no registro: { $new }.
class-log = Pôr estes resultados no registro
class-log-hint = No registro um resultado fica guardado para sempre, com o dia e até quando vale, e vai com as cópias. As iniciais também podem ser apagadas lá.
class-remove = Retirar tudo de { $who } deste aparelho e do registro
class-keeping = O que fica neste aparelho
class-keeping-hint = Os resultados somem quando você fecha a página, a não ser que você os guarde. Os códigos não fazem parte do registro nem de nenhuma cópia; o que você põe no registro, sim. O que você retira deste aparelho some dele. As cópias que você salvou ou passou a outros ficam onde estão.
class-keep = Guardar os resultados neste aparelho
class-kept = Os resultados ficam guardados neste aparelho.
class-not-kept = Os resultados não ficam guardados.
class-save = Salvar todos os códigos como arquivo
class-erase = Retirar todos os resultados deste aparelho
class-remove-codes = Todos os resultados de { $who } saem deste aparelho. O que os outros fizeram fica.
class-remove-off = Retirar
class-erase-warning = { $n ->
    [one] Um resultado sai deste aparelho. O que você pôs no registro fica lá, e também os arquivos que você salvou.
   *[other] { $n } resultados saem deste aparelho. O que você pôs no registro fica lá, e também os arquivos que você salvou.
 }
class-erase-do = Retirar todos
class-erase-leave = Deixar aqui
class-gone = Eles saíram deste aparelho. Você pode pôr de volta até sair desta parte.
class-put-back = Pôr de volta

## The first fill, step by step

first-fill = Seu primeiro enchimento
first-fill-about = Um guia leva você por um enchimento nesta página. Ele mostra cada passo onde você vai fazê-lo no trabalho.
first-fill-safe = O guia não digita nada e não registra nada. Só conta o que você mesmo faz. Você pode pular qualquer passo, e parar quando quiser.
first-fill-begin = Começar o primeiro enchimento
first-fill-again = Passar por ele mais uma vez
first-fill-resume = Continuar no passo { $n }
first-fill-runs = Está em curso. Você está no passo { $n } de { $of }.
first-fill-link = Primeira vez? Deixe um guia levar você pelo seu primeiro enchimento.
first-fill-link-resume = Continuar o seu primeiro enchimento, passo { $n }
first-fill-at = Primeiro enchimento, passo { $n } de { $of }
first-fill-told = { $at }: { $title }. { $standing }
first-fill-is-done = Feito
first-fill-not-done = A fazer
first-fill-is-warned = Feito, com um aviso
first-fill-warned = Feito, com um aviso: { $warning }
first-fill-stopped = Ainda não feito. Dosagem avisa: { $warning }
first-fill-escape = Para voltar aqui, aperte a linha de cima ou a tecla Esc.
first-fill-to = Ir para “{ $control }”
first-fill-next = Próximo passo
first-fill-finish = Terminar
first-fill-skip = Pular este passo
first-fill-back = Voltar
first-fill-pause = Deixar para depois
first-fill-close = Parar o guia
first-fill-put-away = Fechar
first-fill-ended = Esse foi o seu primeiro enchimento
first-fill-ended-all = Você passou por todos os passos. No trabalho, peça a quem conhece o serviço que olhe os seus primeiros enchimentos.
first-fill-ended-skipped = Você pulou estes passos. Volte a eles, ou peça a alguém que mostre.
first-fill-ended-governs = Decidem o rótulo, a FDS, as regras do seu local e pessoas treinadas.

first-fill-wear = Vista o que o rótulo pede
first-fill-wear-do = Faça isto antes de abrir um frasco. Um respingo pode ferir na hora os seus olhos e a sua pele. A página lista o que usar em “{ $control }”. Decidem o rótulo e a FDS.
first-fill-wear-list = Para { $product } use isto: { $wear }
first-fill-wear-none = Nenhum código de perigo de { $product } pede que você use algo. Siga o rótulo, a FDS e as regras do seu local.
first-fill-wear-unknown = A página não conhece todos os perigos de { $product }. Leia o rótulo e a FDS, ou pergunte.
first-fill-wear-on = Já estou usando
first-fill-wear-read = Eu li o rótulo
first-fill-wear-again = Você se preparou para outro rótulo. Olhe de novo o passo 1 para este.
first-fill-wear-again-go = Mostrar o passo 1
first-fill-wear-lacks = Ainda não há produto. Escolha um no passo 3, depois volte.
first-fill-wear-open = Marque a caixa quando tudo estiver pronto.
first-fill-wear-done = Tudo pronto para { $product }.

first-fill-machine = Escolha a sua máquina
first-fill-machine-do = Olhe a máquina ao seu lado. Escolha essa máquina em “{ $control }”. A página precisa do tanque dela para saber quanta água vai.
first-fill-machine-lacks = A página não sabe quanto cabe no tanque. Olhe na placa ou no manual da máquina, ou pergunte.
first-fill-machine-done = A página tem { $machine }, com um tanque de { $tank }. É a sua? Se não, escolha outra.

first-fill-product = Escolha o produto e leia o rótulo
first-fill-product-do = Pegue o frasco na mão. Escolha o mesmo nome em “Produto”. Depois compare “Diluição no rótulo” com o rótulo. Os dois têm de dizer o mesmo.
first-fill-product-locked = Aqui o piso e o padrão dele decidem o produto. Pegue esse frasco na mão. Confira se o nome dele é o desta página. Se não for, pergunte antes de despejar.
first-fill-product-lacks = A página ainda não consegue ler este rótulo. Vá a “Diluição no rótulo” e veja o que diz ali.
first-fill-product-done = A página tem { $product }, com “{ $label }” no rótulo. É isso que diz o seu frasco?

first-fill-floor = Escolha o piso e veja a regra dele
first-fill-floor-do = Escolha o piso que você vai limpar. Alguns produtos estragam alguns pisos para sempre. Onde o seu local tem um padrão para ele, vale essa regra.
first-fill-floor-locked = Escolha o piso que você vai limpar. O seu local tem um padrão para ele. A página dosa por essa regra e por nenhuma outra.
first-fill-floor-lacks = Ainda não há piso. Pergunte que piso é e o que pode ir nele.
first-fill-floor-done = A página tem { $floor }.
first-fill-floor-standard = O padrão dele é { $standard }.
first-fill-floor-no-standard = Nenhum padrão está em vigor para este produto nele. Decide o rótulo.

first-fill-level = Até onde encher, e com o que medir
first-fill-level-do = Faça só o quanto você precisa. Ponha o nível em “Encher o tanque até”. Depois escolha em “Medida na parede” a jarra ou bomba que fica junto à sua torneira.
first-fill-level-lacks = A página ainda não consegue ler o nível ou a medida. Embaixo do campo ela diz por quê.
first-fill-level-done = Você enche até { $level }. A sua medida é esta: { $measure }. É isso mesmo?

first-fill-amount = Leia a quantidade
first-fill-amount-do = É este tanto de produto que vai neste enchimento. Leia em voz alta, com a unidade. Nunca adivinhe, e nunca ponha um pouco mais por garantia.
first-fill-amount-is = A sua quantidade é { $amount }.
first-fill-amount-lacks = Ainda não há quantidade. A página diz o que falta no lugar dela.
first-fill-amount-stopped = No lugar da quantidade há um aviso. Leia e faça o que ele diz.
first-fill-amount-open = Agora diga por que a água vai primeiro.
first-fill-amount-done = Você tem a quantidade, e sabe por que a água vai primeiro.
first-fill-why = Quando você despeja à mão, por que a água vai primeiro?
first-fill-why-cheaper = Assim o produto custa menos.
first-fill-why-splash = Faz menos espuma e respinga menos.
first-fill-why-same = Não faz diferença.
first-fill-why-right = Certo. Água que cai sobre o produto faz espuma e pode respingar no seu rosto. O ácido também vai na água, nunca a água no ácido.
first-fill-why-wrong = Ainda não. Pense em água que cai com força sobre produto forte. Escolha de novo.

first-fill-record = Registre o enchimento
first-fill-record-do = No trabalho aperte “{ $control }” assim que o tanque estiver cheio. Assim o próximo turno sabe o que há nele.
first-fill-record-training = Isto é só treino? Então pule este passo. O que se registra entra no registro de verdade e fica lá. Depois você pode marcar que foi por engano, mas ainda dá para ver.
first-fill-record-lacks = Ainda não há quantidade para registrar.
first-fill-record-stopped = Um aviso impede, então nada pode ser registrado aqui.
first-fill-record-open = Você não pôs nenhum enchimento no registro desde que começou.
first-fill-record-done = O seu enchimento está no registro.

first-fill-shift = No fim do turno
first-fill-shift-do = Água suja que fica em um tanque cheira mal e cria germes. Faça estas cinco coisas toda vez, nesta ordem. Depois marque cada uma em “{ $control }”, em Registro.
first-fill-shift-drain = Esvazie os dois tanques onde água suja pode ir.
first-fill-shift-rinse = Enxágue os tanques com água limpa.
first-fill-shift-filters = Limpe os filtros, para a aspiração ter ar.
first-fill-shift-brush = Limpe o saco de detritos ou a escova.
first-fill-shift-squeegee = Limpe o rodo, para ele não deixar riscos.
first-fill-shift-lacks = Nenhum enchimento desta máquina está hoje no registro, então não há nada para marcar. Leia as cinco coisas.
first-fill-shift-open = Ainda a fazer: { $tasks }.
first-fill-shift-done = As cinco estão marcadas.
