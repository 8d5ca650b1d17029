/**
 * What a recogniser may write for a word, because it sounds the same or nearly so: the word, then everyday words and rows of
 * them, the nearest first; behind `~` what is a phone apart. Found by `SoundAlikes` in a pronouncing dictionary and written here by
 * `npx tsx server/commands/sound-alikes.ts`; what no dictionary tells is in confusions.ts.
 */
const FOUND = `
acceptable: accept a bill, accept a bell, accept a bull, accept a ball, accept a bowl, except a bill
acting: act in, act inn, ~actin; added: add id, add hid, ~aided
adjusted: adjust id, a just hid, adjust hid, owe just id
adjuster: adjust are, adjust or, a just ear, adjust ear, a just air, adjust air
adjusting: a just inn, a justin, adjust inn, edge a sting, a just wing, adjust wing
adjustment: a just mint, adjust mint, a just meant, adjust meant; age: ~aged; aid: ade, aide, eyde, eight, ~weighed
air: aer, ayre, ere, err, eyre, heir; alarm: ill arm, el arm, ell arm; already: all ready
ambient: am be hunt, am bee and, am bee hunt, am be ant, am be aunt, am bee an, ~ambien
anti: ante, auntie, an tee, an tie, an tea, ant eye, ant i, aunt eye, ~anted; anymore: any more, a knee more
anywhere: any where, any wear, a knee wear, a knee where, any air, any hair; applied: up lied; arm: harm, ~warm
around: a round; backed: ~backe, ~blacked; backing: back inn, backe in, backe inn, ~bagging, ~baking
backup: back up, backe up; backwards: back words, backe words, bag words, pack words; badly: badley
baked: ~bake, ~braked; ball: bawl; bar: barr, barre, baar, bahr, bahre, boar, ~barred
barrel: baril, behrle, berrill, beryl, burel, burell, bare ill, bear ill, bare el, bear el, bare ell, bear ell
basket: bask it, bask hut, bask a, bask at, bask ought, bask what; beat: beet, bead
beeping: be pin, bee pin, beep in, beep inn, ~peeping; bend: ~penned; bends: ~bands; bent: bendt, bente
beyond: be aunt, bee aunt; bin: bihn, bun, ~bean; binding: bind in, bind inn, bind wing, bind hung, pine ding, ~blinding
bits: bitz, buts, butts, beets, ~bets; black: ~backe; bleed: ~bead; bleeding: bleed inn, bleed wing, ~beading
bleeds: ~beads; blew: bleu; block: bloc, bloch, blok; blocked: ~bloc; blocks: blocs; blow: bleau, blowe
blowing: blow inn, ~bowing; blue: bleu; blued: ~booed; board: bored, barred, ~boar, ~barr, ~barre, ~poured
body: boddie, boddy, ~bodied; bolt: boldt, bolte, bold, bowled
bolting: bolding, bowl tongue, bowl tin, bolt inn, bolt wing, bowl ding, ~boating, ~boldin; bolts: boltz, ~boats
bone: boan, boehne, boen, bohn, bohne, bown, bowne, ~bun, ~boned; bonnet: bonn it, bonne it, bonn hut, bonne hut
bore: boar, baur, boer, bohr, borre, barr, barre, ~barred, ~pour; bother: ~bothered
bottom: bought him, bott him, bought hum, bott hum, bought em, bott em
bow: bao, bough, beau, beaux, boe, boeh, bowe, ~powe; bowl: boal, boehl, bohl, bole, boll, buol, ~bold, ~pole
box: boxx, ~barks; break: brake, ~braked, ~bake
breaking: braking, brake in, brake inn, break inn, break wing, brake wing, brake hung, ~baking
breather: breathe are, breathe or, breathe ear, breathe her, breathe air, brea their; bring: brin
bringing: bring inn, bring wing, ~printing; brittle: brit ill, britt ill, brit el, brit ell, britt el, britt ell
broken: broke an, broke inn, broke own, broke won, ~broking; brought: broad, ~bought
bubble: bubb ill, bubb el, bubb ell, ~bubbled; bubbles: bubb ills, bubb alls, bib ills, bubb hills
bubbling: bubble in, bubb allin, bubble inn, bubble wing, bubb a leng, bubb alling; budge: ~badge
bug: bugg, bugge, ~beg, ~bag, ~bugged
buggered: bugger, bug eared, bugg eared, bugge eared, bug heard, bug herd, bugg heard, ~beggar
building: bill ding, billed in, billed inn, build inn, build wing, bell ding, ~bidding, ~budding, ~builtin, ~belting
built: bildt, billed; bumped: ~pumped; burn: burne, bern, berne, byrne, ~barn, ~born, ~bun; burned: ~burne
burning: berning, burn inn, burne in, burne inn, burn wing, burne wing, burne hung, ~bunning
burnt: bernd, berndt, bernt, ~burne; burr: bir, birr, ~bare, ~bear, ~barr, ~barre, ~boar; bush: busch
bushing: boo shing, bush inn, ~pushing
busted: bested, boasted, bused id, bust id, bused it, bused hid, bust hid, bossed id, ~posted
button: butt an, but inn, butt in, butt inn, bet an, ~butting, ~bettin; cage: kage, ~caged
calibrated: calibrate add, calibrate odd, calibrate owed, calibrate hid; calibrating: calibrate inn, calibrate wing
cap: capp, kapp, cab, ~capped; carbon: karban, car been, car bun, carb an, core been, core bun, corr been
case: caisse, cayce; casing: case inn
celsius: cell sea is, cell see is, sell sea is, sell see is, cell sea has, cell sea hiss
center: centerre, senter, senner, centered, sent are, sent or, cent are, cent or, sent ear, cent ear
centered: cent eared, sent eared, sent heard, cent heard, cent herd, sent herd; changing: change inn, change wing
chase: chace; chased: chaste, ~chest; checked: ~chicked, ~cheeked; checks: cheques, czechs, ~chicks, ~cheeks
chemical: chem a kill, chem a call, chem a coll, chem a coal; chip: ~cheap; chips: chipps; choked: ~chalked, ~joked
circle: circled, sir kill, sir coll, sir coal; clamp: ~clump, ~camp; clean: kleen, ~keen
cleaning: clean inn, clean wing; clear: cleere, kleer; clearance: clear inns; closes: clothes is
coat: cote, kote, ~quote, ~goat; coated: coat id, coat hid, ~quoted; cocked: ~clocked; coil: coile, coyle
collapsed: collapse; column: collom, collum, colomb, coll him, coll hum, call him, coll em; comm: calm, com, qom
compound: come pound, comm pound, comp hound, chem pound, cam pound, comp wound
compressed: compress, come pressed, chem pressed, comm pressed, cam pressed, come press, camp rest
connected: connect id, connect hid, can act id, can acted; connection: connexion, can heck shin
connector: connecter, connect are, connect or, connect ear, connect air, can act are, can act or
contact: contac, conn tacked, can tacked, conn tack, ~contract; control: cant roll, cant rolle
controller: control are, control or, control ear, control her, control air, control were; correctly: correct lead
corroded: corrode id, corrode hid, care owe did, care owed id, core owe did, core owed id
couple: cup ill, cup el, cup ell, ~coupled; coupling: cup leng; covered: ~culvert; crack: krack, kracke; cracked: kracht
cracking: crack inn, crack wing; crooked: crook id, crooke id, crook a, crook add, crook odd, crook owed; crud: ~crowed
crumbling: crumb billing, crum billing, crumble in, crumb belling, crum belling, crumble inn; crushed: ~crashed
crusty: crust he, cross tee, cross tea, crust eat, crust we; cut: kut, ~cot; cuts: cutts, kutz, ~cats, ~cots
cutting: cut inn; cycled: psi killed, sigh killed, psi cold, psi called, sigh called, sigh cold
damage: dam edge, damn edge; damaged: dam edged, damn edged; dauber: doub are, doub or, doub ear, doub her, doub air
daubers: doub ears, doub hers, doub airs, doub ares, doub ours, doub oars; debris: dubree; deep: diep, ~dip
dent: ~den, ~tent; dented: dent id, dent hid, den to, den did, tent id; dents: ~tents
detector: detect are, detect or, detect ear, detect her, detect air, detect our
dial: dyal, deihl, dye ill, die el, dye el, die ell, dye ell
diaphragm: die if ram, dye if ram, dye a from, die off ram, dye off ram, die of ram
diaphragms: die if rams, dye if rams, die off rams, dye off rams, die of rams, dye of rams; die: dye, dai, ~died, ~tie
dig: ~duck; direct: deregt, die wrecked, dye wrecked, dough wrecked, die racked, die wreck, die rech; dirt: ~dart
dirty: dear tea, dear tee, deer tea, deer tee, dare tea, dare tee; disassembled: does assembled; disc: disque, ~desk
discarded: disc are did, disc our did, discard id, disc oar did, disc ore did, disc oared id
disconnected: disconnect id, does connected, does connect id, disconnect hid, disc an acted, disco necked id
displacer: displace are, displace or, displace ear, does play sir, displace her, displace air
door: doar, doerr, dohr, dore, dorr, ~dart; dope: ~doped; doubt: doutt; downstream: down streamed, town stream
dozen: does inn; drag: ~dragged; dragging: drag in, drag inn, drag wing, drag hung; drain: draine, drane, ~train
drained: ~draine, ~trained; drawing: draw inn; drawn: draughn, ~dawn; dressing: dress inn, dress wing; dried: ~died
drip: ~dripped, ~drub, ~dip; dripping: tripping, drip inn, drip wing, ~dipping, ~drubbing; drips: dripps, ~trips, ~dips
drive: ~dive; dropping: drop inn, drop wing, draw pin, ~drubbing; drove: ~dove; drum: drumm, ~drummed, ~dumb
dry: drye, ~try; dug: doug, duck, ~tug; dump: ~damp; dumped: ~damped; dumping: damping, dumb pin, dump inn, dump wing
dumps: ~damps; ear: hear, ~eared; ears: hears, ~airs; eaten: eaton, eton, eat an, eat in, eat inn, heat an, he ton
edge: ~edged, ~wedge; edges: edge is, ~wedges, ~ages; egg: egge; eight: ate, aydt; elbow: el bow, ell bow, hell bow
element: el a mint, ell a mint, el a meant, ell a meant, el him and, ell him and
empty: em tee, em tea, empt he, hem tea, hem tee, ~emptied; energized: energize
eroded: ear owe did, ear owed id, erode id, a row did, a road id, a rode id; erosion: ear ocean
everywhere: every where, every wear, of re wear, every air, every hair, every hare
extruded: extrude id, extrude a, extrude add, extrude odd, extrude owed, extrude it; face: phase, ~vase; faced: ~phased
faces: phases, face is, phase is, ~vases; facing: phasing, face inn
fahrenheit: fair an height, fare an height, fair in height, fair inn height, fare in height, fare inn height
fail: faile; failed: ~faile, ~felled; fails: fales, ~fells, ~phase
fair: fare, faire, fehr, fer, ferre, phair, ~fur, ~fared, ~fear
feedback: feed back, feed backe, feed bag, feed backed, feet back, feed pack; feet: feat, feed, ~fitt; fell: fehl, fel
ferrule: ~fool; ferrules: ~fools; file: pfeil, phyle; fill: fil, phil; filled: field, ~felled
filter: fill tear, fill tore, fill tar; finish: finnish; finished: finish
finishes: finish is, finish his, finish as, finish has, finish hiss; fit: fitt; fits: fitts, fitz
fitted: fit id, fitt id, fit hid, fitt it, fitt hid, feet id; fitting: fit inn, fitt in, fitt inn
fittings: fit inns, fitt inns, fit wings, fitt wings; five: fife; fix: fickes; fixing: fix inn, fix wing, fig sing
flanges: flan jaws, flange owes; flash: flasch, ~flesh; flat: flatt, ~fat; flats: ~fats
flattened: flatten, flat and, flatt and, flat hund, flatt hund, flatt end, flat owned; flipping: flip inn, flip wing
float: flowed; floor: flor, flore, ~floored; flush: flesh, ~flash; flushed: fleshed, ~flashed
follower: follow are, follow or, fall owe are, fall owe or, follow ear, fall owe ear; foot: foote
forget: for get, four get, fur get, fahr get, fear get, fair get
forgot: four got, for got, for gott, four gott, fur got, fur gott
forgotten: four got an, forgot an, for gotten, four gotten, for gott an, four gott an; fouling: foul in, foul inn
four: faure, fore, forr, fahr, ~fort, ~fur; freely: freel he
freezing: free sing, freeze in, frees in, frees inn, freeze inn, freeze wing
frosted: frost id, frost hid, frost add, frost odd, frost owed; frozen: froze an, froze inn, froze own, froze won
fuel: few el, few ell, ~fool; gall: gaul, gaulle, ~goal; galling: gall inn, ~calling; gap: gapp
gasket: gas cut, gas kit, guess cut, gas coat, gas cat, gas cot
gaskets: gas cuts, gas kits, guess cuts, gas cats, gas cots, gas coats; gauge: gaige; gauges: gauge is; gave: ~cave
glass: glas, ~glassed; gotten: gott an, got inn, gott in, gott inn; grab: grabbe, ~grabbed, ~crab
grass: gras, grasse, ~grassed; grease: greece, griess, ~crease, ~geese; green: greene; grit: greet; groove: ~grove
grooves: ~groves; ground: ~crowned; gummed: ~gunned; gun: gunn, ~gunned
hair: hare, haire, hairr, hehr, herr, herre, air, ~haired; hairline: hair line, hare line, hair lined, hare lined
half: haff; halfway: half way, half weigh; hammered: ham eared, hamm eared, hamme eared, ham heard, ham herd, hamm heard
handwheel: and wheel, hanged wheel, hand wheeled, hund wheel
hardened: hard hund, heard and, oared and, hard owned, herd and, heart and, ~hardin; head: ~hid
header: head are, head or, head ear, head her, head air; hear: ear; heard: herd, hird, hurd, haired, ~eared
height: heit, hiett, hight, hite, hide, ~white; held: ~hailed, ~healed, ~heeled; him: hymn, imm, hum, ~hem
hissing: hiss in, he sing, hiss inn
holding: hole ding, whole ding, hold inn, holed inn, hold wing, holed wing, ~halting; holds: olds
hole: hoel, hoell, hoelle, hohl, ~hall, ~haul; holed: holde, ~hauled; holes: wholes, holz, ~halls, ~hauls, ~hoes
hone: hoehn, hoehne, hoen, own; honed: owned, ~hund, ~homed; hook: hooke; hooked: ~hooke; hose: hoes, owes
housing: how sing; housings: how sings
hundred: hund rid, hund eared, and rid, hund writ, hund heard, hund herd, ~hunted, ~wondered, ~unhurt, ~hunter
hurt: herdt, hert, hirt, hurtt, heard, herd, ~hut; hydro: hide row, eyed row; ice: eyes, ~highs
inches: in cheese, inn cheese
indicator: indic ate are, indic ate or, indic eight are, indic eight or, indic a tear, indic ate ear
inlet: in let, in lett, inn let, inn lett, an lett, in lead
inner: inn are, inn or, in ear, inn ear, inn her, in air, ~enter, ~winner; insert: inn sir, inn sort, inns hurt
inside: in side, in sighed, inn side, inn sighed; inspected: inspect id, inspect hid, inn spec to, inn spec did
inspection: in spec shin, inn spec shin, in spec shown, an spec shin, in spec shone, inn spec shone
install: in stall, inn stall, an stall, inns tall, in stole, in stalled
installed: in stalled, inn stalled, an stalled, in stall, inn stall, when stalled
intact: in tacked, inn tacked, an tacked, hint act, in tack, inn tack; iron: eye earn, i earn, high earn
isolate: ice a late, eye sill ate, eye sill eight, i sill ate, i sill eight, eyes a late
isolated: isolate id, isolate it, isolate hid, isolate a, isolate add, isolate odd; issue: a shoe, a shoo
issues: a shoes; jack: jac, jacques; jam: jamb; jerky: jerk he; joint: joynt, joined, ~join; junk: juhnke
key: kea, kee, kyi, quai, quay, qui; kilo: kyllo, kill owe, kill whoa, kill ho, kill hoe, key low, key lowe
kilopascal: kilo pass kill, kilo pass call, kilo pass coal, kilo pass coll
kilopascals: kilo pass kills, kilo pass calls, kilo pass coals; kit: kitt; kits: kitts, kitz; knife: ~knifed; laid: lade
lap: lapp, lappe; lapped: ~lappe, ~leaped; lapping: lap inn, lapp in, lapp inn, lappe in, lappe inn
leak: leake, leek, leick, ~lick; leakage: leak edge, leake edge; leaked: licked, ~leake
leaking: licking, leak inn, leake in, leake inn; leaks: leeks, licks; least: leased; leave: leve, leaf, ~live
leg: legg, legge, ~legged; lens: lenz, ~lanes, ~leans; letting: let inn, lett in, lett inn
lever: leaver, leever, lover, liver, leave are, leave or, leve are, leve or, leave ear, leve ear; life: live
lift: leafed; lifted: lift id, lift hid, leafed id, lift add, lift odd, lift owed; lifting: lift inn, lift wing
limits: limb its, limb huts, limb hits, limb eats, limb oats, limb whats; linkage: link edge
lip: lipp, lippe, ~leap, ~lipped; lips: lipps, leaps; listen: lease an, ~lesson
listening: listen in, listen inn, listen wing, listen hung; live: liv, love, ~leve, ~lived; load: lode, ~lowe
loaded: lowe did, load id, load it, load hid, low deed, lowe deed; lock: locke, laack, laake, loch, lok, ~luck, ~log
locked: ~lucked, ~locke, ~liked; locker: laugher, locher, lock are, lock or, locke are, locke or, lock ear, locke ear
locks: lox, ~lucks, ~likes; longer: long gear; loose: luce, lose, loos, ~loosed
loosened: loose and, lose and, loos and, loose hund, loose owned, lose hund
losing: loosing, lose in, lose inn, loos in, loos inn; loss: los, laws; lots: lats, lottes, lotts, lotz
lower: lowe are, lowe or, low ear, lowe ear, lowe her, low air, ~lowered; lube: luebbe, loop; machine: mush in, mush inn
main: mane, maine, mayne, meyn, ~maned; making: may king, make inn; manual: man you el, man you ell, man you hill
mark: marke, marc, marque, merc, ~mach; marked: ~marke; marks: marcks, marques, marx; max: macks, macs, maxx
maximum: maxim him, maxim hum, maxim em, max him him, maxim am, max him hum; measured: measure
melted: melt id, melt it, melt hid, melt a, melt add, melt odd; metal: mettle, met ill, met el, met ell
meter: metre, meat are, meat or, meet are, meet or, mete are, mete or
meters: metres, me tears, meat ears, meet ears, mete ears, meat hers, meet hers
methanol: meth an all, meth in all, meth inn all, meth an hall, meth an haul, meth an wall
metres: meters, me tears, meat ears, meet ears, mete ears, meat hers, meet hers; mid: mitt
middle: mid ill, me dull, mid el, mid ell; mil: mill, mille, ~meal, ~milled; milky: mil key, mill key, milk he, meal key
milliliters: millilitres, mill a leaders, mill ill heaters, mil a leaders, mil ill heaters
millilitres: milliliters, mill a letters, mil a letters, mill a leaders, mill ill heaters, mil a leaders, mil ill heaters
millimeter: mil a meter, mill a meter, mill a metre, mil a metre, meal a meter, meal a metre
millimeters: mil a meters, mil a metres, mill a meters, mill a metres, meal a meters, meal a metres
million: millin, mill young, mil young, mil an, mill an; minor: miner, meiner, minar, mineer, mine ear, mine air, ~niner
minutes: me nuts; misaligned: miss a lined, miss aligned, miss a line, mess a lined, mess aligned, miss align
miss: mis, ~mess, ~missed; missed: midst, mist, ~miss; missing: miss in, me sing, miss inn, ~messing
monitor: monitored, ma nut are, ma nut or, monit are, monit or, ma knit are, ma knit or
mounted: mount id, mount hid, mount add, mount odd, mount owed; mounting: mount inn, mount wing, ~mountain
movement: move mint, move meant; mud: mudd, mid, ~mad, ~mowed, ~mitt; mute: ~mew; need: kneed, knead, nead, nied
needle: nedel, neidl, knee dull, kneed ill, need el, need ell, kneed el, kneed ell, ~needled; nest: neste; new: gnu
newton: new ton, knew ton, newt an, knew tin, new tin, newt in; nick: knick, nic, nik; nicked: ~necked
nicks: knicks, nix, nyx, ~necks, ~mix; nipple: knipl, knippel, knipple, nipp ill, nipp el, nipp ell, ~nibble
normal: nor mil, nor mill, norm ill, norm el, norm ell, norm all
normally: nor milli, normal he, normal we, normal eat, norm a lead, norm alley; nose: noes, ~nosed
nut: nutt, knit, ~net, ~knot; nuts: knits, nets, ~knots, ~nots, ~notes; old: olde; one: won
operator: upper eight are, upper eight or, upper ate are, upper ate or; order: oared are, oared or
outer: out ear, out air; outlet: out let, out lett, out lead, out led; output: out put, out putt
outside: out sighed, outs eyed
outstanding: out standing, outs tan ding, out stand in, out stand inn, outs tanned in, outs tanned inn
override: over ride, over write, of are ride, of or ride, over rye, wove are ride; packed: pact
packing: pack inn, ~pecking; pad: pat; painted: paint id, paint it, paint hid, pain to, pane to, pain did
paper: pay per, pape are, pape or, pape ear, pape her, pay pair
paraffin: pair a fun, pear a fun, para fun, pair if an, pear if an, per a fun; partial: parshall, pour shell, pour shall
partly: part lead, port lead, ~parti; passed: past, ~paced, ~paste; passes: ~pusses, ~paces; passing: pass inn, ~pacing
past: ~paced, ~paste; pee: pea, peay; pegged: ~peg, ~begged; perfect: per fact; photo: fauteux; photograph: photographed
pick: pic, pik, pig, ~peak, ~peck; picked: picht, peaked, peeked, ~pricked
picking: peaking, peeking, pea king, pee king, pick inn, ~pecking, ~pickling; pictures: pick cheers, pick chairs
pilot: pilate, pie lit, pile it, pile hut, pie let, pie lett; pin: pinn, ~pen; pinch: punch; pinched: punched
pinhole: pin whole, pin hold, pin holed, pen hole, pen whole, pin hall
pinholes: pin wholes, pen holes, pen wholes, pin halls, pin hauls, been holes; pins: ~pens, ~beens, ~bins
pint: pined, ~pine; pipe: ~piped; pit: pitt, putt, ~pet; pits: pitts, pitz, ~pets
pitted: pitied, pit id, pitt id, putt id, pit hid, pitt it, pitt hid, ~petted
pitting: pit inn, pitt in, pitt inn, ~petting, ~bitting; plastic: plas tick, plas tech, plas ticked, plus tick, plas tug
plate: plait, played; plugging: plug inn, plug wing; pocket: pa cut, paw cut, pa kit, pock it, pock hut, paw kit
pointer: poynter, pointe are, pointe or, point ear, pointe ear, pointe her, point air
pop: popp, poppe, paap, paape, ~pup; popped: ~poppe, ~piped; pops: ~pups; port: porte, poured, ~pour; ports: portz
positioner: position are, position or, position ear, position her, position air, position were
pot: pott, ~putt, ~pawed, ~bought, ~bott, ~paw; power: powe are, powe or, powe ear, powe her, powe air
press: presse, pres; pressed: prest, ~presse, ~breast; pressure: prescher, pressured; problem: prob limb, prob lamb
problems: prob limbs, prob lambs; pry: pri
psi: sigh, sai, tsai, pee as eye, pee as i, pea as eye, pea as i, pea a sigh, pee a sigh, ~sighed, ~sight
pulling: pooling, pull inn; punctured: pink cheered, pink sheared, pink shirt
putting: petting, putt in, putt inn, put inn, ~patting, ~butting; putty: pity, putt he; quart: ~court, ~cart
quarter: quart are, quart or, quart ear, quart her, quart air, quart were
quarters: quart ears, quart hers, quart airs, quart years, quart ours, quart ares; quarts: quartz, courts, carts
quit: ~quilt; quits: ~quilts; rate: rait, raitt, rayed, ~ray
rattling: rattle in, rat allin, rattle inn, rattle wing, rat leng, rat a leng; reamed: rimmed; reassembled: re assembled
rebuild: re build, re billed, re built, re bill; rebuilt: re built, re build, re billed, re belt, re bill
recalibrated: re calibrate id, re calibrate it, re calibrate hid; recheck: reach egg, reach heck, re chuck
reconnected: re connect id, reconnect id, re connect it, re connect hid, reconnect hid, re can acted; red: reade, redd
refilled: re field, re felled; refitted: re fit id, re fitt id, refit id, re fit it, re fit hid, re fitt it
reinstalled: re in stalled, re inn stalled, re an stalled, re in stall, re inn stall, re when stalled
relaxed: relax, real axed, real acts, re lacks, real ax, real axe, real waxed; relay: re lay, real hay
released: release, real east, re leased, re list, re lease; remachined: ream a sheen
remaining: re main in, remain in, remain inn, re mane in, re mane inn, re main inn; removed: re moved; renewed: re newt
repacked: reap act, rip act, ripp act, rippe act, re backed
repacking: re pack in, re pack inn, repack inn, repack wing, re pack wing, re pecking
repair: rip air, ripp air, rippe air, rip hair, rip hare, ripp hair
repaired: re paired, reap aired, rip aired, ripp aired, rippe aired, rip haired
repeat: reap eat, rip eat, ripp eat, rippe eat, rip heat, ripp heat
replace: re place, reap lace, ear place, re plays, reap lays, are plays, ~repays
replaced: re placed, reap laced, rip laced, ripp laced, rippe laced, reap lace
replacement: rip lace mint, ripp lace mint, rippe lace mint, rip lace meant, ripp lace meant, rippe lace meant
replacing: rip lay sing, ripp lay sing, rippe lay sing, rip lay sung, ripp lay sung, rippe lay sung
resealed: re sealed, re seal, re seale, reas healed, reas heeled, ~receipt; reset: ~receipt
retainer: retain are, retain or, writ a near, retain ear, retain air, writ a nor
retapped: re tapped, re tap, re tapp, re tappe
retightened: re tight and, re tight hund, re tight end, re tie tongued, re tight an, re tie ton
return: returned, re turn, writ earn, re torn, writ earned, rid earn, read earn, ~written; reusable: re usable
reuse: re yous; reusing: re you sing, re use inn, reuse inn, reuse wing, re use wing, re you sung; reverse: rivers
rid: writ; ridge: rich; rim: ~rimmed; ring: wring, ringe, wrung, rung, ~ringed; rings: rungs; ripped: reaped, ~rippe
rock: roc, roch, rocke, rocque; rod: rodd, raad, rot, rott, ~raw
rodded: raw did, rod id, rodd id, rod hid, rodd it, rodd hid; rolled: roald, ~rolle, ~ruled, ~rode, ~rowed
rotted: rot id, rott id, rot it, rot hid, rott it, rott hid, ~righted
rotten: rot an, raw ton, rott an, rot in, raw tin, rot inn, ~rotting; rough: ruf, ruff
rounded: round hid, round add, round odd, round owed, ~hounded; rub: rib, ~rob, ~robe, ~ripp, ~rippe
rubbed: ribbed, ~robbed, ~robed; rubber: rub are, rub or, rub ear, rib are, rib or, rub air, ~robber
rubbing: ribbing, rub inn, ~robbing; runout: wrung out, rung out, wren out
ruptured: rip cheered, ripp cheered, rippe cheered; rust: ~roast; rusted: rested, roasted, rust id, rust hid, roast id
salt: sault; sand: sande, ~send; sanded: sand id, sande id, sand hid, sande it, sande hid, sang did
sandy: sandi, sandie, sande he; saving: save in, save inn, ~safing; score: scor; scored: ~scor
scoring: score inn, scor in, scor inn, score wing, scor wing, scor hung
scratches: scratch is, scratch owes, scratch hiss; screen: ~scream; seal: seale, cele, ciel, seel, ~sill
sealed: ~seale, ~celled, ~seed; sealing: ceiling, seeling, sieling, seal inn, seale in, seale inn, ~selling
seals: seales, sills, ~cells, ~sells, ~cels; seam: siem, ~seemed; seat: seed
seating: sea tongue, see tongue, sea tin, see tin, seat inn, ~sweeting, ~seeding; seconds: sec ands
seep: seip, seipp, sepe, ~sip, ~sweep; seeping: sipping, see pin, sea pin, seep inn, ~sweeping, ~sleeping
seeps: sips, ~sweeps, ~sleeps; seize: seas, cees, saez, sease, seese, sies; sense: cents, sens, ~sensed, ~sons, ~suns
separator: separate are, separate or, separate ear, separate her, separate air, supper ate are; serious: ~cereals
service: servis, serviss, serviced, surface, serve is, serv is, serve hiss, serv hiss, sir vess, serve has, ~surfaced
serviceable: service a bill, service a bell, service a bull, service a ball, service a bowl, service hub ill
sets: ~sweats; setting: set inn, ~settling; severe: ~sever; shallow: schalow, shall owe, shall ho, shall hoe
sharp: scharp, sharpe; sheared: sheard, ~shared, ~shear; shook: schook
shot: schaadt, schott, shott, szot, szott, ~shutt; shut: shutt, schut, schutt; shutoff: shut off, shutt off
shutting: shut in, shut inn, shutt in, shutt inn, ~shirting
sideways: side ways, side weighs, sighed ways, sighed weighs, sigh days, site ways; sign: sein, sine
silicone: silicon, sill a cone, see luck own, sea luck own, seal a cone, seale a cone, cell a cone
single: singel, singled, sing goal, sing gall; skid: skied; skip: skipp, ~skipped; slack: ~sack; slag: ~slug
slid: ~sled; slide: ~sly, ~sligh, ~sighed; slight: sleight, ~sly, ~sligh, ~sight; slipped: ~slept, ~slip, ~sipped
slow: sloe; sluggish: slug wish, slug hush; smelling: smell in, smell inn, smell wing, smell hung; smoke: smoak
snap: snapp; sniffer: sniff are, sniff or, snuff are, snuff or, sniff ear, sniff her; soap: sope; soaped: ~souped
solid: saw lid; solvent: solve and, solve hunt, solve an, solve ant, solve aunt, solve hint
somewhere: some where, some wear, sum where, sum wear, sum were, some air, ~summer; sorry: saari, sari
sour: sauer, ~soured; span: spann; spill: ~spell; spilled: spilde, ~spelled
spilling: spelling, spill in, spill inn, spill wing, spill hung; spins: ~spends; split: splitt, ~spit
sprayed: ~spread, ~spade; spring: spurring, sprung, spearing; square: ~scare; squashed: squash; squeezed: squeeze, ~skis
stainless: stain less, stain lass, stain last, stain loss; steady: study, stead he; steamed: ~stemmed, ~streamed
stem: stemm, ~stemmed; sticking: stick inn, stick wing; sticks: styx; straight: strait, strate, streight
straighten: straight an, straight inn, straight own, straight won, ~statin
straightened: straight and, straight hund, straight owned
straightening: straight inning, straight an inn, straighten inn, straight an wing, straighten wing, straight owning
strainer: strain are, strain or, strain ear, strain her, strain air, strain our; stretched: stretch
stuck: stucke, ~stack; stud: stead, ~stirred; studs: studds; stuffing: stuff inn, stuff wing
sulfide: self eyed, sill fight; supply: sip lie, sep lie, ~supplied
surface: searfoss, service, surf is, surf has, surf hiss, ~surfaced
surfaces: services, surface is, surf a says, surf a sis, surface has, surface his, surface as; swap: swapp
swelled: ~celled; switches: switch is, switch owes, switch hiss; swole: ~sole, ~soul; swollen: sole an, soul an, ~solin
taking: take inn, ~tacking; tap: tapp, tappe; tapped: ~tappe; tear: terre, teer, ~dare, ~dear
tearing: to ring, to wring, to wrung, to rung, tee ring, tear inn, ~daring, ~dearing, ~deering; tears: ~dares; tee: tea
temperature: temp rich are, temp rich or, temper a cheer, tempera cheer, temper a chair, tempera chair; ten: tenn
tension: ten shin, ten shown, ten shone; test: ~taste; tested: test id, test hid, ~tasted, ~dusted
tests: testes, ~tastes; thickness: ~sickness; thou: thao, thau; threaded: thread id, thread hid
threadlocked: thread lucked, thread locke
threadlocker: thread lock are, thread lock or, thread locke are, thread locke or, thread lock ear, thread locke ear
threw: thru; throw: ~throat; thrown: throne; thumb: thum, thumm; tight: tied, ~tie
tighten: titan, tight an, tie ton, tie tin, tight inn, tie ten, tie tongue
tightened: tight and, tight hund, tie tongued, tie ton, tie tanned, tie toned
tightening: tight inning, tie ton in, tie ton inn, tight an inn, tighten inn, tight an wing; tiny: tie knee
tip: tipp, ~tipped, ~dip, ~tub; toast: toste; tool: toole, tuel, tuell, tuyle; top: topp
tore: tor, torr, torre, ~tarred; torn: ~thorn; torque: ~dark, ~talk; torqued: ~talked; torques: ~talks; touch: tuch
touching: touch in, to chin, touch inn; trace: trays, ~traced; track: trac, trak, ~tack; trapped: ~trap, ~trappe
trim: trimm, ~trimmed; trouble: troubled; true: treu, trew, trieu; tubing: to bin, too bin, two bin, tube inn
turns: tern, ternes, terns, ~terms; twisted: twist id, twist it, twist hid
undo: undue, an dew, in dew, inn dew, inn do, inn due; union: you none
unloaded: an loaded, an lowe did, an load id, unload id, in loaded, in lowe did
unmute: an mute, in mute, inn mute, on mute, one mute, own mute
unscrewed: inn screwed, an screw, own screwed, won screwed; upside: up side, up sighed, ups eyed, up sight, ups hide
upstream: ups trim, op stream, up streamed, yup stream, ups dream, hip stream
usable: use a bill, use a bell, use a bull, use a ball, use a bowl, yous a bill; vented: vent id, vent hid, ~venti
venting: vent inn, vent wing; vessel: vesel, vessell, vess ill, vess el, vess ell
waited: weighted, wait id, waite id, wait it, wait hid, waite it, waite hid; wall: walle, wahle, wal
wallered: waller, wall eared, walle eared, wall heard, wall herd, walle heard, walle herd
wallowed: wall owed, walle owed, ~wallo; washers: wash ears, wash airs, wash years, wash ares, wash oars, wash ores
washing: wash inn; wax: wacks, ~acts, ~axe, ~wakes; ways: weighs, wais; weak: weick, weik, wieck
wear: ware, wehr, werre; wearing: wareing, waring, wear inn, where inn, ~airing; weeping: we pin, weep inn
weld: ~willed; welded: weld id, weld hid, well deed, well dead, el did, ell did
welding: well ding, will ding, weld inn, weld wing, el ding, ell ding; whack: wack, wag; wheel: weil, ~heal, ~heel
wheeled: weild, wield, willed, ~healed, ~heeled, ~weed; wind: wined, winged; wore: war, warr, woehr, wor, ~oar, ~ore
worn: warn, warne, ~warned, ~warm; worth: werth, wirth, wurth, ~earth; wrap: rap, rapp, rappe, ~rapped, ~wrapped
write: reit, rite, wright, ride, ~rye; wrong: rong, ~rung, ~wrung; yoke: yolk, yoak, ~oak; zero: see row, sea row
zeroed: see road, sea road, sea rode, sea rowed, see rode, see rowed
`;

export interface SoundAlikeRow {
  heard: readonly string[];
  mean: string;
  /** a phone apart, and not the same sound */
  near: boolean;
}

/** The rows by the first word heard, the longest first. */
export function soundAlikesByFirst(): Map<string, SoundAlikeRow[]> {
  const byFirst = new Map<string, SoundAlikeRow[]>();
  for (const one of FOUND.trim().split(/; |\n/)) {
    const [mean = "", rows = ""] = one.split(": ");
    for (const row of rows.split(", ")) {
      const near = row.startsWith("~");
      const heard = row.slice(near ? 1 : 0).split(" ");
      const first = heard[0] as string;
      const all = byFirst.get(first) ?? [];
      byFirst.set(first, all);
      all.push({ heard, mean, near });
    }
  }
  for (const rows of byFirst.values()) rows.sort((a, b) => b.heard.length - a.heard.length);
  return byFirst;
}
