# Portuguese (Brazil), in Fluent syntax: what Log says, and the record below Fill's answer. The log is “registro”, a record
# in it “anotação”. See fill.ftl for the kind of Portuguese. No native reader has checked this file yet.

## Recording a fill
log-recording = A anotação
record-fill = Registrar enchimento
record-fill-rests = Já registrado
record-fill-waits = Ainda não guardado
log-recorded = Registrado às { $time }, número { $number }.
log-recorded-other = { $machine }, { $day }: registrado às { $time }, número { $number }.
log-not-recorded = Não registrado: { $why }
log-correct-it = Corrigir
log-stopped = Você não pode registrar este plano: há um aviso contra ele.
log-stopped-way = Anotar o que você fez de verdade
log-details = Acrescentar à anotação antes de tocar
log-details-next = Esse enchimento está registrado. O que você digita agora vai com o próximo: { $product } em { $machine }. Para acrescentar ao que já está registrado, toque em “Corrigir”.
log-details-for = Vai com a próxima anotação: { $product } em { $machine }.
log-details-hint = Tudo pode ficar vazio. É limpo depois de registrado, e quando você passa depois a outra máquina, produto ou piso; as suas iniciais ficam neste aparelho.
log-who = As suas iniciais
log-who-hint = Duas ou três letras. Mais tarde podem ser apagadas do registro.
log-areas = Áreas para que é este enchimento
log-area = Acrescentar área
log-area-more = Escolha uma área
log-measured = Concentrado que você mediu
log-measured-hint = Deixe vazio se você usou o que a página disse e não mediu.
log-no-volume = Esta dose não é um volume. O que você pesou ou contou vai nas notas.
log-scale = O que a leitura diz
log-scale-none = Nada foi lido
log-scale-active = Substância ativa
log-scale-ratio = Concentração da solução
log-reading = Leitura
log-reading-take = Usar a leitura de { $reading }
log-deviation = Você fez de outro modo?
log-deviation-none = Não, como diz a página
log-deviation-more = Mais concentrado
log-deviation-less = Menos concentrado
log-deviation-other-product = Outro produto
log-deviation-other = Outra coisa
log-other-product = Que produto foi posto?
log-other-unlisted = Nenhum destes: digo qual abaixo
log-planned-other = planejado: { $product }, { $dose }
log-other-rest = O enchimento não é contado para { $product }. No tanque pode haver um resto de outro produto: o que está nele e o que você despeja talvez não possam se misturar.
log-other-way = Veja Cuidados antes de encher
log-reason = Por que mudou
log-notes = Notas
log-left-undone = Ficou por fazer em { $day }, { $machine }: { $tasks }. Faça isso antes de encher.
log-left-undone-unticked = Ficou por fazer em { $day }, { $machine }: ninguém marcou depois do último enchimento. Olhe a máquina antes de encher.
log-left-way = Marcar em “Fim do turno”
remark-log-more = Você mediu { $measured }, mais que o planejado, { $planned }. Registre se foi isso que entrou.
remark-log-more-title = Mais que o planejado
remark-log-less = Você mediu { $measured }, menos que o planejado, { $planned }. Registre se foi isso que entrou.
remark-log-less-title = Menos que o planejado
remark-log-over-label = Você mediu { $measured }. Neste enchimento vale o rótulo: não mais que { $most }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-over-label-title = Demais: fora do rótulo
remark-log-under-label = Você mediu { $measured }. Neste enchimento vale o rótulo: não menos que { $least }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-under-label-title = De menos: fora do rótulo
remark-log-under-minimum = Você mediu { $measured }. Neste enchimento vale o mínimo legal: não menos que { $least }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-under-minimum-title = De menos: abaixo do mínimo
remark-log-over-standard = Você mediu { $measured }. Neste enchimento vale o seu padrão: não mais que { $most }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-over-standard-title = Demais: fora do seu padrão
remark-log-under-standard = Você mediu { $measured }. Neste enchimento vale o seu padrão: não menos que { $least }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-under-standard-title = De menos: fora do seu padrão
remark-log-over-machine = Você mediu { $measured }. Neste enchimento vale o limite da máquina: não mais que { $most }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-over-machine-title = Demais: fora do limite da máquina
remark-log-under-machine = Você mediu { $measured }. Neste enchimento vale o limite da máquina: não menos que { $least }. Registre o que entrou, e corrija o tanque antes de limpar com ele.
remark-log-under-machine-title = De menos: fora do limite da máquina
remark-log-over-tank = Você anota { $level }. No tanque desta máquina cabem { $tank }.
remark-log-over-tank-title = Mais do que cabe no tanque
log-lack-reason = Diga por que você fez de outro modo.
log-lack-why = Diga por que você corrige.
log-lack-product = Escolha o produto.
log-lack-scale = Escolha o que a leitura diz.
log-lack-nothing = Digite pelo menos uma quantidade, ou uma nota.
log-lack-day = Isto não é um dia.
log-lack-time = Diga a que hora foi, como 06:30.
log-lack-later = Essa hora ainda não chegou.

## What the browser did not keep
log-not-kept = { $n ->
    [one] { $n } anotação ainda não está guardada
   *[other] { $n } anotações ainda não estão guardadas
 }
log-again = Tentar de novo
log-let-go = Descartar
log-waiting-save = Salvar como arquivo
log-denied = O navegador não guarda nada para esta página. É assim em uma janela anônima ou privada, e também com o armazenamento bloqueado. Salve a anotação como arquivo, ou abra a página em uma janela comum.
log-full = O aparelho não tem mais espaço para a anotação. Salve-a como arquivo, abra espaço no aparelho, depois tente de novo.
log-newer = Uma versão mais nova da página guarda o registro neste aparelho. Carregue a página de novo.
log-blocked = Outra aba com uma versão mais velha da página segura o registro. Feche essa aba, depois tente de novo.
log-unreadable = O navegador não consegue ler o registro que guarda. Salve como arquivo o que é mostrado aqui, e abra a sua última cópia.
log-no-random = O navegador não dá números aleatórios, então a anotação não pode ser selada. Salve como arquivo, ou use outro navegador.
log-failed = O navegador não guardou: { $text }. Tente de novo, ou salve como arquivo.

## The view
log-heading = O que foi enchido?
log-parts = Partes do registro
log-fills = Enchimentos
log-shift = Fim do turno
log-questions = Perguntas
log-keep = Cópia e cuidado
log-opening = Abrindo o registro.
log-opening-of = Abrindo o registro: { $done } de { $of } enchimentos.
log-shut = O registro não pode ser aberto
log-shut-do = Você ainda pode registrar um enchimento: ele fica na tela até ser guardado ou salvo como arquivo.
log-count = { $n ->
    [one] { $n } enchimento no registro. Este aparelho anota como { $device }.
   *[other] { $n } enchimentos no registro. Este aparelho anota como { $device }.
 }
log-count-struck = { $n ->
    [one] { $n } deles foi anotado por engano e não conta em lugar nenhum.
   *[other] { $n } deles foram anotados por engano e não contam em lugar nenhum.
 }
log-backup-last = { $n ->
    [one] Última cópia: { $when }; { $n } anotação veio depois.
   *[other] Última cópia: { $when }; { $n } anotações vieram depois.
 }
remark-log-backup-none = { $n ->
    [one] Não há cópia de segurança. Se este aparelho se perder, { $n } anotação se perde com ele.
   *[other] Não há cópia de segurança. Se este aparelho se perder, { $n } anotações se perdem com ele.
 }
remark-log-backup-none-title = Salve uma cópia
remark-log-backup-old = { $n ->
    [one] A última cópia tem { $days } dias. Se este aparelho se perder, { $n } anotação se perde com ele.
   *[other] A última cópia tem { $days } dias. Se este aparelho se perder, { $n } anotações se perdem com ele.
 }
remark-log-backup-old-title = Salve uma cópia
log-save-now = Salvar uma cópia agora
log-lost = Faltam anotações
log-lost-line = { $device }: número { $from } a { $to }
log-lost-do = Elas já estiveram aqui. O navegador as perdeu. Abra a sua última cópia: o que ela tem volta.
log-clock-back = { $n ->
    [one] O relógio deste aparelho foi atrasado antes de { $n } anotação. A hora dela pode estar errada; nada se perde.
   *[other] O relógio deste aparelho foi atrasado antes de { $n } anotações. As horas delas podem estar erradas; nada se perde.
 }
log-astray = { $n ->
    [one] { $n } correção fala de um enchimento que não está neste registro. Abra a cópia que tem o enchimento.
   *[other] { $n } correções falam de enchimentos que não estão neste registro. Abra a cópia que tem os enchimentos.
 }

## Which fills
log-seek = Que enchimentos
seek-month = Mês
seek-product = Produto
seek-machine = Máquina
seek-area = Área
seek-standard = Padrão
seek-who = Quem
seek-any = Tudo
seek-all = Mostrar todos
log-shown = { $shown } de { $n } enchimentos

## The table
log-table = Enchimentos, o mais novo primeiro
log-caption = { $n ->
    [one] { $n } enchimento, o mais novo primeiro
   *[other] { $n } enchimentos, o mais novo primeiro
 }
log-keys = Use as setas, Page Up, Page Down, Home e End para ir de enchimento em enchimento. Tecle Enter para abrir um.
log-empty = Nenhum enchimento foi registrado ainda. Dosagem tem um botão para isso abaixo da quantidade.
log-none-found = Nenhum enchimento é assim. Use menos filtros, ou mostre todos os enchimentos.
log-column-when = Quando
log-column-product = Produto
log-column-planned = Planejado
log-column-measured = Medido
log-column-machine = Máquina
log-column-who = Quem
log-struck = por engano
log-contested = dois com este número
log-corrected = corrigido
log-title = Número { $number }, { $when }: { $product }, { $machine }
log-history = O que foi anotado, em ordem
log-past = { $kind }, { $number }, { $when }.
log-written-by = Anotado por { $who }.
log-kind-fill = Enchimento
log-kind-correction = Correção
log-kind-erasure = Apagamento
log-kind-lesson = Treino
log-kind-unsaid = Anotação
log-part-by = Quem anotou
log-part-who = Quem fez
log-part-reason = Por que mudou
log-part-notes = Notas
log-part-why = Por que foi corrigido
log-erased-parts = Apagado
log-blanked = Apagado a pedido
log-altered-text = Não é o que foi anotado
log-nothing = Nada
log-struck-field = Conta
log-is-struck = Não: anotado por engano
log-not-struck = Sim
log-standard = Padrão
log-standard-of = { $name }, versão { $version }
log-product = Produto
log-machine = Máquina
log-floor = Piso
log-at = Feito em
log-day = Dia do enchimento
log-time = Hora do enchimento
log-station = Como você chama este aparelho
log-station-hint = As anotações que você faz aqui dizem isso, como “Ponto de enchimento, biblioteca”.
log-this-device = Este aparelho
log-done-by = Quem fez
log-done-by-hint = Iniciais
log-concentrate = Concentrado planejado
log-water = Água planejada
log-level = Enchido até
log-end-of-shift = Fim do turno
log-unknown-record = Não se sabe
log-choose-product = Escolha o produto
log-as = A anotação diz que { $who } fez.
log-new-day = É um novo dia. Quem é você?
log-still = Ainda sou { $who }
log-other-person = Outra pessoa
log-correct = Corrigir esta anotação

## By hand, and corrections
log-by-hand = Anotar um enchimento à mão
log-hand-heading = Um enchimento à mão
log-hand-hint = Anote o que foi feito de verdade. Deixe dia e hora vazios se foi agora mesmo.
log-hand-record = Registrar
log-leave-form = Fechar sem salvar
log-correct-heading = Corrigir uma anotação
log-correct-hint = A primeira anotação fica como estava. O que você muda aqui é anotado abaixo dela, com as suas iniciais e o motivo. Um texto que você esvazia fica como estava; só apagar tira um texto.
log-why = Por que você corrige
log-nothing-new = Nada foi mudado ainda.
log-correct-save = Salvar a correção
log-strike = Anotado por engano
log-unstrike = Conta, sim
log-strike-hint = Um enchimento anotado por engano fica no registro e não é contado em lugar nenhum.

## End of the shift
log-left = Por fazer, ou não marcado
log-left-line = { $machine }, { $day }: { $tasks }
log-left-line-unticked = { $machine }, { $day }: ninguém marcou depois do último enchimento
log-shift-today = Enchidas nas últimas 24 horas
log-shift-hint = Marque cada máquina nesta ordem. É salvo na hora, com o último enchimento da máquina.
log-shift-none = Nenhuma máquina foi enchida nas últimas 24 horas.
log-shift-late = Antes, não marcadas
log-shift-late-hint = Estas foram enchidas nos últimos 7 dias e algo ficou por fazer. Marque o que já está feito.
log-shift-machine = { $n ->
    [one] { $machine }: { $n } enchimento, às { $time }
   *[other] { $machine }: { $n } enchimentos, o último às { $time }
 }
log-task-drain = Tanques esvaziados
log-task-rinse = Tanques enxaguados
log-task-filters = Filtros limpos
log-task-brush = Saco de detritos ou escova limpos
log-task-squeegee = Rodo limpo
log-state-done = Feito
log-state-not-done = Não feito
log-state-not-asked = Não marcado

## Questions
log-by = Contar por
log-by-product = Produto
log-by-machine = Máquina
log-by-area = Área
log-by-month = Mês
log-by-who = Quem
log-by-standard = Padrão
log-unnamed = Sem nome
log-uncounted = { $n } de { $of } enchimentos não puderam ser contados aqui.
log-column-what = De quê
log-column-fills = Enchimentos
log-column-used = Usado
log-column-off = A mais ou a menos
log-column-share = Em por cento
log-column-otherwise = O que mudou, ficou por fazer, notas
log-column-compared-planned = Planejado, do medido
log-column-compared = Medido
log-column-uncounted = Não contado
log-column-number = Número
log-column-ratio = Medido do planejado
log-column-range = Desde o anterior
log-column-stands-out = Destoa
log-column-price = Preço
log-column-cost = Custo
log-column-left = Resta
log-column-daily = Por dia
log-column-lasts = Dura
log-column-recipe = Receita
log-column-readings = Leituras
log-column-mean = Média
log-column-week = Mudança por semana
log-column-doubt = Dúvida
log-column-says = O que isso diz
log-column-task = Tarefa
log-column-left-undone = Por fazer
log-column-water = Água
ask-use = Quanto foi usado?
ask-use-picture = Concentrado usado.
ask-use-legend = A barra é o que foi usado; a linha é o que foi planejado.
ask-use-table = Uso e plano
remark-log-use-none = Nenhum enchimento tem uma quantidade que se possa somar.
remark-log-use-planned = { $fills ->
    [one] { $used } pelo plano, de { $fills } enchimento. Ninguém mediu, então isto é o que foi planejado, não o que foi despejado.
   *[other] { $used } pelo plano, de { $fills } enchimentos. Ninguém mediu, então isto é o que foi planejado, não o que foi despejado.
 }
remark-log-use-even = { $used } em { $fills } enchimentos. Os { $measured } que foram medidos levaram o planejado.
remark-log-use-over = { $used } em { $fills } enchimentos. Os { $measured } que foram medidos levaram { $off } a mais que o planejado: { $share } em excesso.
remark-log-use-under = { $used } em { $fills } enchimentos. Os { $measured } que foram medidos levaram { $off } a menos que o planejado: { $share } em falta.
remark-log-assumed = { $n ->
    [one] { $n } enchimento não foi medido e conta como planejado.
   *[other] { $n } enchimentos não foram medidos e contam como planejados.
 }
remark-log-shared = { $n ->
    [one] { $n } vez um enchimento foi para várias áreas. Para cada uma delas conta o enchimento todo, então o uso por área é o máximo que pode ser.
   *[other] { $n } vezes um enchimento foi para várias áreas. Para cada uma delas conta o enchimento todo, então o uso por área é o máximo que pode ser.
 }
ask-doses = As doses foram como no plano?
ask-doses-picture = Medido do planejado, enchimento por enchimento, com os limites.
ask-doses-values = Medido do planejado
ask-doses-ranges = Distância do enchimento anterior
ask-doses-legend = Linha fina: a média. Linhas tracejadas: os limites. Um anel com número destoa; a tabela diz por quê.
ask-doses-table = Os enchimentos do gráfico
ask-constant = { $symbol } = { $value }
remark-log-doses-high = Em média receberam { $mean } do plano: demais, enchimento após enchimento. Que variem por igual não faz disso o certo.
remark-log-doses-low = Em média receberam { $mean } do plano: de menos, enchimento após enchimento. Que variem por igual não faz disso o certo.
remark-log-doses-none = Nenhum enchimento tem ao mesmo tempo uma quantidade planejada e uma medida.
remark-log-doses = De { $known } enchimentos medidos, { $within } ficaram a menos de um décimo do plano, { $over } acima e { $under } abaixo.
remark-log-chart-few = Um gráfico precisa de { $fewest } enchimentos medidos; há { $n }.
remark-log-chart-steady = Dos últimos { $n } nenhum destoa: variam como sempre.
remark-log-chart-out = Dos últimos { $n } enchimentos, { $out } destoam da variação comum. Pergunte o que foi diferente. { $run } seguidos de um mesmo lado da média também destoam.
remark-log-chart-pulled = Enchimentos fora dos limites puxam a média para si. Olhe esses primeiro: corrija o que foi anotado errado.
remark-log-chart-estimate = Estes limites são uma estimativa: vêm de só { $n } valores.
control-beyond = Fora dos limites
control-jump = Um salto desde o anterior
control-run = Oito ou mais de um lado da média
ask-cost = Quanto custou?
ask-cost-picture = Custo por produto.
ask-cost-table = Custo por produto
remark-log-cost-none = Nenhum enchimento tem ao mesmo tempo uma quantidade e um preço. Os preços ficam com os produtos em Local.
remark-log-cost = { $fills ->
    [one] O custo de { $fills } enchimento, aos preços de hoje. { $assumed } deles como planejado, sem medir.
   *[other] O custo de { $fills } enchimentos, aos preços de hoje. { $assumed } deles como planejado, sem medir.
 }
remark-log-unpriced = O preço de { $products } não é conhecido; não está na soma.
remark-log-water-free = O preço da água não é conhecido; a água não está na soma.
ask-stock = Quanto dura o estoque?
ask-stock-picture = Dias até a prateleira ficar vazia.
ask-stock-legend = A barra é quanto o estoque dura; a linha é quanto uma entrega demora.
ask-stock-table = Estoque por produto
ask-days = { $n ->
    [one] { $n } dia
   *[other] { $n } dias
 }
stock-count = Embalagens de { $product } na prateleira
stock-day = Dia em que { $product } foi contado
stock-no-day = Escolha o dia em que você contou: hoje ou antes.
stock-no-container = O local não diz quanto uma embalagem contém.
stock-not-counted = Ainda não contado
remark-log-stock-none = Conte a prateleira e ponha o número aqui, para ver quanto dura.
remark-log-stock = { $days ->
    [one] { $product } acaba primeiro, em cerca de { $days } dia. Isso é uma estimativa, com { $daily } por dia: a média dos últimos 90 dias, ou desde o primeiro enchimento neles.
   *[other] { $product } acaba primeiro, em cerca de { $days } dias. Isso é uma estimativa, com { $daily } por dia: a média dos últimos 90 dias, ou desde o primeiro enchimento neles.
 }
remark-log-stock-late = { $product } acaba antes que chegue uma entrega pedida hoje. Peça agora.
log-no-use = Ainda sem uso conhecido
log-products = Mais de um produto
ask-drift = As leituras mudam?
ask-drift-picture = { $n } leituras de { $product } com a sua reta e a dúvida dela.
ask-drift-legend = Linha tracejada: como as leituras mudam. Faixa: o que a inclinação pode ser.
ask-drift-table = Leituras por receita
ask-drift-few = Poucas: são precisas { $n } em horas diferentes
ask-drift-no = Sem mudança clara
ask-drift-rises = Sobe
ask-drift-falls = Desce
remark-log-drift-few = São precisas { $fewest } leituras de uma receita, em horas diferentes, para ver uma mudança.
remark-log-drift-steady = { $product }: { $n } leituras com média de { $mean } não mostram mudança clara. Em uma semana mudam { $week }, com { $doubt } para mais ou para menos.
remark-log-drift-rises = { $product }: { $n } leituras com média de { $mean } sobem { $week } por semana, com { $doubt } para mais ou para menos.
remark-log-drift-falls = { $product }: { $n } leituras com média de { $mean } descem { $week } por semana, com { $doubt } para mais ou para menos.
log-too-few-readings = Leituras de menos
log-mixed-readings = Leituras de mais de uma receita
ask-undone = O que ficou por fazer?
ask-undone-picture = Quantas vezes cada tarefa ficou por fazer.
ask-undone-times = { $n ->
    [one] { $n } vez
   *[other] { $n } vezes
 }
ask-undone-table = Tarefas do fim do turno
ask-undone-shifts = Turnos com algo por fazer, o mais novo primeiro
ask-undone-unticked = Turnos que ninguém marcou, o mais novo primeiro
ask-undone-more = { $n } anteriores não estão na lista.
remark-log-undone-unasked = Nenhum turno foi marcado. Turnos que ninguém marcou: { $unticked }.
remark-log-undone-none = { $n ->
    [one] Em { $n } turno marcado nada ficou por fazer. Turnos que ninguém marcou: { $unticked }.
   *[other] Em { $n } turnos marcados nada ficou por fazer. Turnos que ninguém marcou: { $unticked }.
 }
remark-log-undone-part = Turnos marcados: { $n }. Marcados em parte: { $missed }. Turnos que ninguém marcou: { $unticked }.
remark-log-undone = Turnos marcados: { $n }. Com algo por fazer: { $missed }. O que mais vezes não foi feito: { $task }, { $times } de { $n }. Turnos que ninguém marcou: { $unticked }.
figure-log-used = Concentrado usado
figure-log-planned = Planejado, dos enchimentos medidos
figure-log-measured = Medido, dos mesmos enchimentos
figure-log-centre = Média
figure-log-lower = Limite de baixo
figure-log-upper = Limite de cima
figure-log-range = Distância média
figure-log-range-upper = Limite de uma distância
figure-log-cost = Custo
figure-log-cost-concentrate = Concentrado
figure-log-cost-water = Água
formula-log-share = Medido do planejado, dos enchimentos que têm os dois.
formula-log-cost = Concentrado e água aos seus preços.
formula-log-supply = O estoque dividido pelo uso médio de um dia.
formula-log-drift = A inclinação da reta pelas leituras, para uma semana.
formula-control-upper = Três desvios padrão acima da média, da distância média.
formula-control-lower = Três abaixo dela, e não menos que nada.
formula-control-range = O máximo que uma distância costuma ser.

## Out and in
log-out = Salvar o registro
log-out-hint = Uma cópia tem cada anotação com o seu hash. Ela abre em qualquer aparelho, quantas vezes você quiser: nada entra duas vezes.
log-save = Salvar uma cópia
log-csv = Salvar uma tabela
log-csv-hint = A tabela é para ler em uma planilha. Ela não volta para cá: só uma cópia volta.
log-in = Abrir uma cópia
log-open = Abrir um arquivo
log-open-hint = Você vê antes o que ele traria. Nada entra até você dizer.
log-file-too-big = O arquivo é maior que qualquer registro. Ele não foi lido.
log-reading-file = Lendo o arquivo.
log-busy-opening = Lendo os enchimentos: { $done } de { $of }.
log-busy-reading = Lendo o arquivo: { $done } de { $of }.
log-busy-comparing = Comparando: { $done } de { $of }.
log-busy-writing = Gravando: { $done } de { $of }.
log-busy-saving = Fazendo o arquivo: { $done } de { $of }.
log-refused = O arquivo é recusado. Nada entrou.
log-compared = Anotações no arquivo: { $records }. Novas: { $added }. Conhecidas: { $known }.
log-file-broken = O arquivo não está inteiro.
log-file-erases = { $n ->
    [one] { $n } texto seu foi apagado lá a pedido. Ele é apagado aqui também quando você aceita o arquivo.
   *[other] { $n } textos seus foram apagados lá a pedido. Eles são apagados aqui também quando você aceita o arquivo.
 }
log-flaws = { $n ->
    [one] { $n } linha não é uma anotação e fica de fora:
   *[other] { $n } linhas não são anotações e ficam de fora:
 }
log-line = Linha { $line }:
log-conflicts = { $n ->
    [one] { $n } número tem duas anotações que dizem coisas diferentes. As duas são guardadas e mostradas.
   *[other] { $n } números têm duas anotações que dizem coisas diferentes. As duas são guardadas e mostradas.
 }
log-stock-all = Aqui contam todos os enchimentos, seja o que for escolhido acima: todas as máquinas usam a mesma prateleira.
log-erase-texts = Apagar os textos
log-file-altered = Aqui ou no arquivo, estas foram mudadas depois de anotadas: { $records }. Vale a que está como foi anotada, e a mudada não entra.
log-measured-told = medido { $text }
log-conflict-table = Duas anotações de um só número
log-column-record = Anotação
log-column-one = Uma diz
log-column-other = A outra diz
log-take = Aceitar as anotações novas
log-take-broken = Aceitar mesmo assim
log-leave = Deixar de lado
log-left-out = Nada entrou.
log-taken-mended = Nenhuma anotação é nova. O que era diferente foi corrigido pelo arquivo.
log-taken = { $n ->
    [one] { $n } anotação entrou.
   *[other] { $n } anotações entraram.
 }
log-locked = Abrir um arquivo e apagar ficam para um aparelho que não está travado. Destrave antes este em Local.
log-chain = O registro está inteiro?
log-chain-hint = Cada anotação leva um hash da anterior. A conferência acha uma anotação que foi mudada, deixada de fora ou movida.
log-check = Conferir tudo
log-check-not-yet = Não conferido desde que a página foi aberta.
log-check-running = Conferindo: { $done } de { $of }.
log-check-whole = { $n ->
    [one] Inteiro: { $n } anotação está certa.
   *[other] Inteiro: todas as { $n } anotações estão certas.
 }
log-broken = A cadeia se rompe na anotação { $id }.
log-broken-file-do = As anotações dele depois desse ponto podem estar mudadas ou faltar. Peça a quem o salvou uma cópia inteira antes de aceitar.
log-broken-do = Não apague nada. Salve uma cópia como está, avise o seu supervisor, e abra ao lado uma cópia anterior.
log-altered = A anotação não é o que foi anotado.
log-words-altered = Este texto não é o que foi anotado: { $part }.
log-words-gone = Este texto sumiu, e nada diz que foi apagado: { $part }.
log-missing = A anotação falta, e há outras depois dela.
log-doubled = A anotação está ali duas vezes.
log-forked = Outra anotação tem o mesmo número.
log-moved = A anotação está no lugar errado.
log-unlinked = Não combina com a anotação anterior.
log-replaced = Já foi a última anotação, e era outra.
log-heads = O fim de cada cadeia
log-heads-hint = Anote isto ou imprima: mais tarde mostra se faltam anotações no fim, ou se tudo foi escrito de novo.
log-room = Espaço neste aparelho
log-room-used = O navegador usa { $used } de { $allowed } para esta página.
log-room-unknown = O navegador não diz quanto espaço há.
log-room-kept = O navegador guarda o registro até você retirá-lo.
log-room-loose = O navegador pode retirar o registro quando o aparelho ficar cheio.
log-room-refused = O navegador não aceitou. Ele ainda pode retirar o registro quando o aparelho ficar cheio, então salve cópias.
log-persist = Pedir ao navegador que o guarde
log-records = { $n ->
    [one] { $n } anotação.
   *[other] { $n } anotações.
 }
log-erasing = Apagar iniciais
log-erasing-hint = Alguém pode pedir que as suas iniciais saiam. Os enchimentos ficam, e a cadeia continua certa.
log-erase = Iniciais a apagar
log-erase-look = Ver quantas há
log-erase-looking = Procurando.
log-erase-none = Nenhuma anotação traz { $who }.
log-erase-found = { $n ->
    [one] { $n } anotação traz { $who }.
   *[other] { $n } anotações trazem { $who }.
 }
log-erase-class = { $n ->
    [one] { $n } resultado de turma neste aparelho tem estas iniciais e sai também.
   *[other] { $n } resultados de turma neste aparelho têm estas iniciais e saem também.
 }
log-erase-class-done = Os resultados de turma saíram deste aparelho.
log-erase-warning = Apagar não se desfaz. Não chega a cópias salvas antes, nem a outros aparelhos até que abram uma cópia nova. Notas de outros também podem trazer o nome de alguém: abra esse enchimento na lista, e apague ali os textos.
log-erase-do = Apagar de vez
log-erase-leave = Manter
log-erase-doing = { $n ->
    [one] Apagando de { $n } anotação.
   *[other] Apagando de { $n } anotações.
 }
log-erase-done = { $n ->
    [one] Apagado de { $n } anotação.
   *[other] Apagado de { $n } anotações.
 }
log-honest = O registro acha descuidos e mudanças. Ele não barra quem pode apagar os dados deste navegador, nem quem escreve um registro inteiro de novo; os fins das cadeias, guardados em outro lugar, mostram isso também.
log-long-line = A anotação tem { $text } bytes, demais para uma linha. Encurte as notas.
log-cut-off = O arquivo acaba antes desta anotação.
log-device = “{ $text }” não é a identificação de um aparelho.
log-number = { $text } não é o número de uma anotação.
log-when = “{ $text }” não é uma hora do dia com o seu fuso.
log-hash = “{ $text }” não é um hash.
log-kind = A anotação não diz o que é.
log-stray = “{ $text }” não tem lugar em uma anotação deste tipo.
log-lesson = “{ $text }” da sessão de treino não pode ser assim.
log-nobody = Uma sessão de treino em que ninguém participou.
log-of = “{ $text }” não diz qual anotação.
log-unknown = Não há anotação { $text }.
log-not-a-fill = A anotação { $text } não é um enchimento; só enchimentos são corrigidos.
log-nothing-changed = A correção não muda nada.
log-nothing-to-erase = A anotação { $text } não tem nada a apagar.

## On paper
log-print-hint = Escolha um mês para imprimir o registro dele.
log-paper = O registro deste mês em papel
log-print = Imprimir registro
log-paper-title = Registro de { $month }
log-paper-part = Só uma parte do registro:
log-paper-table = Enchimentos do mês
log-paper-corrected = Corrigido em { $when } por { $who }: { $why }
log-paper-struck = Riscado em { $when } por { $who }: { $why }
log-paper-unstruck = Contado de novo em { $when } por { $who }: { $why }
log-paper-nobody = alguém sem nome
log-paper-no-why = nenhum motivo dado
log-paper-totals = Totais por produto
log-assumed-in = { $n ->
    [one] { $n } enchimento dos totais não foi medido e conta como planejado.
   *[other] { $n } enchimentos dos totais não foram medidos e contam como planejados.
 }
