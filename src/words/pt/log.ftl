# Portuguese (Brazil), in Fluent syntax: what Log says, and the record below Fill's answer. The log is “registro”, a record
# in it “anotação”. See fill.ftl for the kind of Portuguese. No native reader has checked this file yet.

## Recording a fill
log-recording = A anotação
record-fill = Registrar este enchimento
record-fill-rests = Já registrado
record-fill-waits = Ainda não guardado
log-recorded = Registrado: { $time }, número { $number }.
log-recorded-other = { $machine }, { $day }: registrado, { $time }, número { $number }.
log-not-recorded = Não registrado: { $why }
log-correct-it = Corrigir
log-stopped = Você não pode registrar este plano: há um aviso contra ele.
log-stopped-way = Anotar o que você fez de verdade
log-details = Acrescentar à anotação antes de tocar
log-details-next = Esse enchimento está registrado. O que você digita agora vai com o próximo: { $product } em { $machine }. Para acrescentar ao que já está registrado, toque em “Corrigir”.
log-details-for = Vai com a próxima anotação: { $product } em { $machine }.
log-details-hint = Tudo pode ficar vazio. Isto se limpa depois de registrado, e quando você passa então a outra máquina, produto ou piso; as suas iniciais ficam neste aparelho.
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
log-scale-ratio = Força da solução
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
log-other-rest = O enchimento não é contado para { $product }. No tanque pode haver um resto de outro produto: o que está nele e o que você despeja podem não combinar.
log-other-way = Veja Cuidados antes de encher
log-reason = Por que de outro modo
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
log-let-go = Deixar ir
log-waiting-save = Salvar como arquivo
log-denied = O navegador não guarda nada para esta página. É assim em uma janela privada, e também com o armazenamento bloqueado. Salve a anotação como arquivo, ou abra a página em uma janela comum.
log-full = O aparelho não tem mais espaço para ela. Salve a anotação como arquivo, abra espaço no aparelho, depois tente de novo.
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
    [one] Não há cópia de segurança. Se este aparelho se perde, { $n } anotação se perde com ele.
   *[other] Não há cópia de segurança. Se este aparelho se perde, { $n } anotações se perdem com ele.
 }
remark-log-backup-none-title = Salve uma cópia
remark-log-backup-old = { $n ->
    [one] A última cópia tem { $days } dias. Se este aparelho se perde, { $n } anotação se perde com ele.
   *[other] A última cópia tem { $days } dias. Se este aparelho se perde, { $n } anotações se perdem com ele.
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
seek-all = Mostrar todos os enchimentos
log-shown = { $shown } de { $n } enchimentos

## The table
log-table = Enchimentos, o mais novo primeiro
log-caption = { $n ->
    [one] { $n } enchimento, o mais novo primeiro
   *[other] { $n } enchimentos, o mais novo primeiro
 }
log-keys = Use as setas, Page Up, Page Down, Home e End para ir de enchimento em enchimento. Tecle Enter para abrir um.
log-empty = Nenhum enchimento foi registrado ainda. Dosagem tem um botão para isso abaixo da quantidade.
log-none-found = Nenhum enchimento é assim. Escolha menos, ou mostre todos os enchimentos.
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
log-part-reason = Por que de outro modo
log-part-notes = Notas
log-part-why = Por que é corrigido
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
