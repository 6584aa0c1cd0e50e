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
practice-topic-pairs = O que nunca pode se encontrar
practice-topic-foam = Espuma
practice-level-first = Nível 1
practice-level-first-is = Um passo e números fáceis. O rótulo é explicado.
practice-level-second = Nível 2
practice-level-second-is = O rótulo como impresso, enchimentos em parte e unidades misturadas.
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
practice-lack-nothing-fits = Estes tanques, rótulos e medidas não combinam. Tente uma medida mais fina.

## The parts of a task

practice-label = O rótulo de { $product } diz “{ $label }”.
practice-measure-us = O oz e o gal dele são unidades dos EUA.
practice-measure-imperial = O oz e o gal dele são unidades imperiais.
practice-aim-low = Use o mínimo que o rótulo permite.
practice-aim-high = Use o máximo que o rótulo permite.
practice-means-plus-water = Quer dizer 1 parte de produto e esse tanto de partes de água.
practice-means-of-total = Quer dizer 1 parte de produto nesse tanto de partes de mistura ao todo.
practice-means-per-water = Quer dizer tanto de produto juntado a tanto de água.
practice-means-made-up = Quer dizer tanto de produto em tanto da mistura toda.
practice-means-percent = Quer dizer partes de produto em 100 partes da mistura toda.
practice-means-per-tank = Quer dizer tanto de produto para um tanque cheio.
practice-means-powder = Quer dizer um peso de pó para tanto de mistura.
practice-means-active = Quer dizer partes de substância ativa em um milhão de partes de mistura.
practice-means-packets = Quer dizer sachês ou pastilhas inteiros para tanto de mistura.
practice-tank = No tanque de { $machine } cabem { $tank }.
practice-machine = A máquina é { $machine }.
practice-machine-least = A máquina precisa de pelo menos { $amount } de produto em um tanque cheio.
practice-machine-most = A máquina aceita no máximo { $amount } de produto em um tanque cheio.
practice-standard = A regra do seu local diz “{ $rule }”.
practice-fill-full = Você o enche até em cima. Água e produto fazem um tanque cheio.
practice-fill-part = Você o enche até { $fill }. Água e produto chegam a essa marca.
practice-fill-on-top = Você põe { $fill } de água. O produto vai por cima disso.
practice-jug = Você mede com isto: { $measure }. Um passo é { $step }.
practice-tested = Você fez o teste de agitar. Não faz espuma.
practice-rest-same = Ainda há { $left } da mesma mistura nele. Ela tem a força certa.
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
practice-foam-product = Quanta espuma faz { $product }: { $class }.
practice-foam-any-product = Você tem um produto novo. Quanta espuma faz: { $class }.
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
practice-ask-rescue-drain = Não há lugar para toda a água de que ele precisa. Quanto você esvazia antes, para que um tanque cheio fique certo? Dê três algarismos.
practice-ask-ppe = Do que você precisa? Escolha tudo o que vale.
practice-ask-pair = Quais dois nunca podem se encontrar?
practice-ask-pairs = Quais destes você mantém separados? Escolha todos os que nunca podem se encontrar, e todos em que um não é conhecido.
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
practice-because-rescue = O produto fica igual. Só a água aumenta. Espere até misturar, depois leia a força de novo.
practice-because-nothing = Alguém leu o rótulo e não achou perigo. Mesmo assim, use o que o seu local pede.
practice-because-other-step = O passo mais próximo é mais ou menos do que as regras permitem. Pegue o seguinte.
practice-because-no-vacuum = Não há aspiração que possa puxar espuma.
practice-because-little-foam = Tão pouca espuma não sobe até a aspiração.
practice-because-unknown = Nem todo o rótulo é conhecido. O que não se sabe conta como o pior caso.

## Wrong roads, and what to do instead

practice-way-parts-for-total = Quase. Você leu o rótulo como partes da mistura toda. Ele conta as partes de água. Some 1 pelo produto.
practice-way-total-for-parts = Quase. Você leu o rótulo como partes de água. Ele conta a mistura toda. O produto é uma dessas partes.
practice-way-water-for-mix = Quase. Você tomou a água pela mistura toda. O produto vem além da água.
practice-way-mix-for-water = Quase. Você tomou a mistura toda por água. Uma parte dela é produto.
practice-way-other-reading = Essa é outra maneira de escrever. Olhe de novo as palavras e os sinais do rótulo.
practice-way-full-for-part = Isso é para um tanque cheio. Você enche só uma parte. Pegue a mesma parte do produto.
practice-way-full-for-rest = Isso é para um enchimento inteiro. A sobra no tanque já tem produto. Desconte.
practice-way-ounces-for-millilitres = Você escreveu onças como mL. Olhe a unidade da sua medida. Uma fl oz dos EUA é cerca de 30 mL.
practice-way-millilitres-for-ounces = Você escreveu mL como onças. Olhe a unidade da sua medida. Uma fl oz dos EUA é cerca de 30 mL.
practice-way-us-for-imperial = Você usou unidades dos EUA. Estas são imperiais. Um galão imperial é um quinto a mais que um dos EUA.
practice-way-imperial-for-us = Você usou unidades imperiais. Estas são dos EUA. Um galão dos EUA é um sexto a menos que um imperial.
practice-way-weight-for-volume = Uma onça de peso não é uma onça fluida. Use a onça fluida para líquidos.
practice-way-upside-down = Você foi pelo lado contrário. Inverta: divida onde multiplicou.
practice-way-decimal-slip = A vírgula andou uma casa. Conte os zeros de novo.
practice-way-other-end = Essa é a outra ponta da faixa. Olhe que ponta a tarefa pede.
practice-way-machine-ignored = A máquina tem o seu próprio limite. Compare o seu número com ele.
practice-way-standard-ignored = O seu local tem uma regra para isto. Compare o seu número com ela.
practice-way-rest-ignored = A sobra tem outra força. Calcule quanto produto há nela e desconte.
practice-way-end-for-added = Isso é o que você tem no fim. A tarefa pede o que você junta ou esvazia.
practice-way-same-again = Você pegou outro tanto igual. Isso só está certo quando a mistura tem o dobro da força.
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
practice-way-pair-missed = Olhe de novo. Você deixou de fora um par que nunca pode se encontrar.
practice-way-unknown-cleared = Ninguém sabe o que há em um deles. O que não se sabe fica separado.
practice-way-pair-not-listed = Não se conhece um choque nesse par. Mesmo assim, nunca misture de propósito.
practice-way-foam-let-in = Faz espuma. Não pode ir em uma máquina com aspiração.
practice-way-not-tested = Ninguém testou. Até lá conta como espumante.
practice-way-kept-out = Não é o que dizem os fatos. Olhe a altura da espuma, a rapidez com que ela baixa, e se há aspiração.
practice-way-not-stopped = Pare antes a máquina. Todo o resto pode esperar.
practice-way-order-mixed = O primeiro passo está certo. Olhe a ordem dos outros.
practice-way-as-given = Essa é a quantidade como foi dada. Diga na unidade que a tarefa pede.
practice-way-round-factor = Você pegou um número redondo para a unidade, como 30 mL para uma onça. Isso basta para uma estimativa. Aqui contam três algarismos.

## What a wrong answer could do

practice-harm-over-label = Isto é mais do que o rótulo permite. Forte demais pode queimar a pele, estragar o piso e deixar uma película escorregadia.
practice-harm-forbidden-pair = No trabalho isto poderia ferir pessoas. Estes dois não podem se encontrar.
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
practice-session-lacks = Um tema não pode ser feito com os seus cadastros. Retire esse tema ou acrescente o que falta.
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
practice-class-erased = O registro tem um resultado igual a este, e as iniciais foram apagadas a pedido. Só aceite se essa pessoa quiser. Então é um lançamento novo.

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
practice-topics-all = Escolher todos os temas
practice-topics-none = Não escolher nenhum tema
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
practice-leave = Parar e perder o feito
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
numbers-mix = Uma proporção em um tanque
numbers-machine = Tanque de
numbers-own = O meu próprio número
numbers-tank = No tanque cabem
numbers-level = Quão cheio está
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
numbers-column-pour = Você despeja
numbers-column-product = Produto
numbers-column-ratio = Proporção
numbers-column-off = Diferença
numbers-drawing-scale = Um tanque de { $tank } como um cubo de { $tank_edge } de largura, cheio até { $total }. Ao lado o produto nele, { $dose }, como um cubo de { $dose_edge } de largura. Os dois estão desenhados em uma só escala.
remark-numbers-coarse = Meio passo deste copo é tanto quanto todo o produto. Escolha uma medida mais fina ou um tanque mais cheio.
numbers-film = A película em um piso
numbers-laid = Como você informa
numbers-laid-rate = Sei quanto ponho no piso
numbers-laid-setting = Por uma regulagem de vazão
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
practice-picture-shaken = Pouca espuma está na linha tracejada ou abaixo depois de um minuto, e baixou a um terço ou menos. Prática comum, sem fonte.
practice-picture-foam = Espuma não pode entrar na aspiração. Teste o que ninguém testou.
practice-state-before = antes
practice-state-topped = completado
practice-state-found = como achado
practice-state-drained = esvaziado
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
