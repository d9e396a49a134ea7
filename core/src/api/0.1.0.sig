#Signature file v4.1
#Version 0.1.0-SNAPSHOT

CLSS public final dev.hingepoint.Message
cons public init(java.lang.String,java.util.List<java.lang.Object>)
meth public !varargs static dev.hingepoint.Message of(java.lang.String,java.lang.Object[])
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String key()
meth public java.lang.String text()
meth public java.lang.String text(java.util.ResourceBundle)
meth public java.lang.String toString()
meth public java.util.List<java.lang.Object> arguments()
meth public static dev.hingepoint.Message joined(java.lang.String,java.util.Collection<?>)
supr java.lang.Record
hfds ENGLISH,PLACE,arguments,key

CLSS public final dev.hingepoint.Quantity
cons public init(double,dev.hingepoint.Quantity$Kind)
innr public final static !enum Kind
meth public dev.hingepoint.Quantity$Kind kind()
meth public double value()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String toString()
meth public static dev.hingepoint.Quantity change(double)
meth public static dev.hingepoint.Quantity clothWidth(double)
meth public static dev.hingepoint.Quantity millimetres(double)
meth public static dev.hingepoint.Quantity radians(double)
meth public static dev.hingepoint.Quantity share(double)
supr java.lang.Record
hfds kind,value

CLSS public final static !enum dev.hingepoint.Quantity$Kind
 outer dev.hingepoint.Quantity
fld public final static dev.hingepoint.Quantity$Kind ANGLE
fld public final static dev.hingepoint.Quantity$Kind CHANGE
fld public final static dev.hingepoint.Quantity$Kind CLOTH
fld public final static dev.hingepoint.Quantity$Kind LENGTH
fld public final static dev.hingepoint.Quantity$Kind SHARE
meth public static dev.hingepoint.Quantity$Kind valueOf(java.lang.String)
meth public static dev.hingepoint.Quantity$Kind[] values()
supr java.lang.Enum<dev.hingepoint.Quantity$Kind>

CLSS public abstract interface dev.hingepoint.Reason
innr public final static BeyondLimit
innr public final static BrokenLaw
innr public final static Missing
innr public final static Unreadable
innr public final static Unsound
meth public abstract dev.hingepoint.Message message()
meth public abstract dev.hingepoint.Reason at(dev.hingepoint.Where)
meth public abstract dev.hingepoint.Where where()
meth public dev.hingepoint.Message line()
meth public java.lang.String sentence()
meth public java.lang.String what()
meth public java.util.OptionalDouble amount()
meth public java.util.OptionalDouble limit()
meth public static java.lang.String millimetres(double)

CLSS public final static dev.hingepoint.Reason$BeyondLimit
 outer dev.hingepoint.Reason
cons public init(dev.hingepoint.Message,dev.hingepoint.Where,java.util.OptionalDouble,java.util.OptionalDouble)
intf dev.hingepoint.Reason
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Reason$BeyondLimit at(dev.hingepoint.Where)
meth public dev.hingepoint.Where where()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.OptionalDouble amount()
meth public java.util.OptionalDouble limit()
meth public static dev.hingepoint.Reason$BeyondLimit of(dev.hingepoint.Message,dev.hingepoint.Where)
meth public static dev.hingepoint.Reason$BeyondLimit of(dev.hingepoint.Message,dev.hingepoint.Where,double,double)
supr java.lang.Record
hfds amount,limit,message,where

CLSS public final static dev.hingepoint.Reason$BrokenLaw
 outer dev.hingepoint.Reason
cons public init(dev.hingepoint.Message,dev.hingepoint.Where,double,double,double)
intf dev.hingepoint.Reason
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Reason$BrokenLaw at(dev.hingepoint.Where)
meth public dev.hingepoint.Where where()
meth public double actual()
meth public double expected()
meth public double tolerance()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds actual,expected,message,tolerance,where

CLSS public final static dev.hingepoint.Reason$Missing
 outer dev.hingepoint.Reason
cons public init(dev.hingepoint.Message,dev.hingepoint.Where)
intf dev.hingepoint.Reason
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Reason$Missing at(dev.hingepoint.Where)
meth public dev.hingepoint.Where where()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds message,where

CLSS public final static dev.hingepoint.Reason$Unreadable
 outer dev.hingepoint.Reason
cons public init(dev.hingepoint.Message,dev.hingepoint.Where)
intf dev.hingepoint.Reason
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Reason$Unreadable at(dev.hingepoint.Where)
meth public dev.hingepoint.Where where()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds message,where

CLSS public final static dev.hingepoint.Reason$Unsound
 outer dev.hingepoint.Reason
cons public init(dev.hingepoint.Message,dev.hingepoint.Where)
intf dev.hingepoint.Reason
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Reason$Unsound at(dev.hingepoint.Where)
meth public dev.hingepoint.Where where()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds message,where

CLSS public final dev.hingepoint.Refusal
cons public init(dev.hingepoint.Reason)
cons public init(dev.hingepoint.Reason,java.lang.Throwable)
meth public dev.hingepoint.Reason reason()
meth public dev.hingepoint.Refusal in(java.lang.String)
supr java.lang.RuntimeException
hfds reason,serialVersionUID

CLSS public final dev.hingepoint.Where
cons public init(java.util.Optional<java.lang.String>,java.util.Optional<java.lang.String>,java.util.Optional<java.lang.String>,java.util.Optional<java.lang.String>,java.util.Optional<java.lang.String>)
fld public final static dev.hingepoint.Where UNKNOWN
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Where edge(java.lang.String)
meth public dev.hingepoint.Where file(java.lang.String)
meth public dev.hingepoint.Where mark(java.lang.String)
meth public dev.hingepoint.Where piece(java.lang.String)
meth public dev.hingepoint.Where size(java.lang.String)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String toString()
meth public java.util.Optional<java.lang.String> edge()
meth public java.util.Optional<java.lang.String> file()
meth public java.util.Optional<java.lang.String> mark()
meth public java.util.Optional<java.lang.String> piece()
meth public java.util.Optional<java.lang.String> size()
meth public static dev.hingepoint.Where inFile(java.lang.String)
meth public static dev.hingepoint.Where inPiece(java.lang.String)
supr java.lang.Record
hfds edge,file,mark,piece,size

CLSS public final dev.hingepoint.allowance.AllowancePlan
cons public init(java.util.Map<java.lang.String,java.lang.Double>)
meth public dev.hingepoint.allowance.AllowancePlan with(java.lang.String,double)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Map<java.lang.String,java.lang.Double> byEdge()
meth public static dev.hingepoint.allowance.AllowancePlan even(dev.hingepoint.pattern.Piece,double)
meth public static dev.hingepoint.allowance.AllowancePlan of(dev.hingepoint.pattern.Allowances,dev.hingepoint.pattern.Piece)
supr java.lang.Record
hfds byEdge

CLSS public final dev.hingepoint.allowance.CuttingLine
meth public java.util.List<dev.hingepoint.curve.Line> notches()
meth public java.util.List<dev.hingepoint.curve.Point> outline()
meth public static dev.hingepoint.allowance.CuttingLine of(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Piece)
meth public static dev.hingepoint.allowance.CuttingLine of(dev.hingepoint.pattern.Piece,dev.hingepoint.allowance.AllowancePlan)
meth public static dev.hingepoint.curve.Vector pressedTowards(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.EdgeDart)
supr java.lang.Object
hfds BETWEEN_STROKES,STROKE,notches,outline
hcls Capped

CLSS abstract interface dev.hingepoint.allowance.package-info

CLSS public abstract interface dev.hingepoint.alter.Alteration
meth public abstract dev.hingepoint.alter.Altered alter(dev.hingepoint.pattern.Draft,dev.hingepoint.alter.Options)
meth public abstract java.lang.String name()
meth public abstract java.util.Map<java.lang.String,java.lang.Object> example()

CLSS public final dev.hingepoint.alter.Altered
cons public init(dev.hingepoint.pattern.Draft,java.util.Map<java.lang.String,java.lang.Object>,java.util.List<dev.hingepoint.move.Step>,java.util.List<dev.hingepoint.check.Law>,java.util.List<java.lang.String>)
meth public boolean holds(dev.hingepoint.pattern.Draft)
meth public dev.hingepoint.alter.Altered then(java.util.function.Function<dev.hingepoint.pattern.Draft,dev.hingepoint.alter.Altered>)
meth public dev.hingepoint.alter.Altered withDraft(dev.hingepoint.pattern.Draft)
meth public dev.hingepoint.alter.Altered withLaws(java.util.List<dev.hingepoint.check.Law>)
meth public dev.hingepoint.alter.Altered withNote(java.lang.String)
meth public dev.hingepoint.check.Ledger$Entry entry(java.lang.String,dev.hingepoint.pattern.Draft)
meth public dev.hingepoint.pattern.Draft draft()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.check.Law> laws()
meth public java.util.List<dev.hingepoint.move.Step> steps()
meth public java.util.List<java.lang.String> notes()
meth public java.util.Map<java.lang.String,java.lang.Object> amounts()
meth public static dev.hingepoint.alter.Altered of(dev.hingepoint.pattern.Draft)
meth public static dev.hingepoint.alter.Altered of(dev.hingepoint.pattern.Draft,dev.hingepoint.move.Paper,java.util.Map<java.lang.String,java.lang.Object>)
supr java.lang.Record
hfds amounts,draft,laws,notes,steps

CLSS public final dev.hingepoint.alter.Catalogue
meth public static dev.hingepoint.alter.Alteration named(java.lang.String)
meth public static dev.hingepoint.alter.Alteration named(java.lang.String,java.util.List<dev.hingepoint.alter.Alteration>)
meth public static dev.hingepoint.alter.Altered alter(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.AlterationRequest)
meth public static dev.hingepoint.alter.Altered alter(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.AlterationRequest,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
meth public static dev.hingepoint.alter.Altered checked(dev.hingepoint.pattern.Draft,dev.hingepoint.alter.Alteration,dev.hingepoint.alter.Options)
meth public static java.util.List<dev.hingepoint.alter.Alteration> all()
supr java.lang.Object
hfds ALL

CLSS public final dev.hingepoint.alter.Faired
meth public static dev.hingepoint.alter.Altered untilLawsHold(dev.hingepoint.pattern.Draft,double,java.util.function.DoubleFunction<dev.hingepoint.alter.Altered>)
supr java.lang.Object
hfds SHORTEST

CLSS public final dev.hingepoint.alter.Fitting
cons public init(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft,dev.hingepoint.check.Ledger,java.util.List<dev.hingepoint.move.Step>,java.util.List<java.lang.String>)
meth public dev.hingepoint.check.Ledger ledger()
meth public dev.hingepoint.pattern.Draft after()
meth public dev.hingepoint.pattern.Draft before()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.check.Ledger$SeamLine> brokenSeams()
meth public java.util.List<dev.hingepoint.move.Step> steps()
meth public java.util.List<java.lang.String> notes()
meth public static dev.hingepoint.alter.Fitting of(dev.hingepoint.pattern.Pattern,dev.hingepoint.alter.Order)
meth public static dev.hingepoint.alter.Fitting of(dev.hingepoint.pattern.Pattern,dev.hingepoint.alter.Order,java.util.List<dev.hingepoint.alter.Alteration>)
supr java.lang.Record
hfds BLENDED,TOLD,after,before,ledger,notes,steps

CLSS public final dev.hingepoint.alter.LargestAmount
meth public static dev.hingepoint.alter.Altered orRefusal(dev.hingepoint.pattern.Draft,double,java.util.function.DoubleFunction<dev.hingepoint.alter.Altered>)
supr java.lang.Object
hfds STEP

CLSS public final dev.hingepoint.alter.Options
meth public !varargs dev.hingepoint.Refusal refuse(java.lang.String,java.lang.Object[])
meth public !varargs dev.hingepoint.alter.Options knowing(java.lang.String[])
meth public !varargs java.util.Optional<java.lang.String> choice(java.lang.String,java.lang.String[])
meth public boolean flag(java.lang.String)
meth public boolean has(java.lang.String)
meth public dev.hingepoint.alter.Options carriedTo(double)
meth public dev.hingepoint.pattern.Length requiredAmount(java.lang.String,java.lang.String)
meth public double carried(double)
meth public double positive(java.lang.String,java.lang.String,dev.hingepoint.Message)
meth public java.lang.String toString()
meth public java.util.List<java.lang.String> names()
meth public java.util.Optional<dev.hingepoint.pattern.Length> amount(java.lang.String)
meth public java.util.Optional<dev.hingepoint.pattern.Length> body(dev.hingepoint.pattern.Draft,java.lang.String)
meth public java.util.Optional<dev.hingepoint.pattern.Length> length(java.lang.String)
meth public java.util.Optional<java.lang.Object> raw(java.lang.String)
meth public java.util.Optional<java.lang.String> text(java.lang.String)
meth public static dev.hingepoint.alter.Options of(dev.hingepoint.pattern.AlterationRequest)
meth public static dev.hingepoint.alter.Options of(dev.hingepoint.pattern.AlterationRequest,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
supr java.lang.Object
hfds alteration,body,fraction,written

CLSS public final dev.hingepoint.alter.Order
cons public init(java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.pattern.AlterationRequest>)
cons public init(java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
meth public !varargs static dev.hingepoint.alter.Order of(java.lang.String,dev.hingepoint.pattern.AlterationRequest[])
meth public dev.hingepoint.alter.Order forBody(java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
meth public dev.hingepoint.alter.Order with(dev.hingepoint.pattern.AlterationRequest)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String size()
meth public java.util.List<dev.hingepoint.pattern.AlterationRequest> alterations()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> body()
meth public java.util.Optional<java.lang.String> front()
supr java.lang.Record
hfds alterations,body,front,size

CLSS abstract interface dev.hingepoint.alter.package-info

CLSS public final dev.hingepoint.check.Drawbacks
meth public static java.util.List<java.lang.String> of(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft,java.util.List<dev.hingepoint.move.Step>)
supr java.lang.Object
hfds DEEP_DART,LANDMARKS,OFF_GRAIN,ON,OVER,PLACES,after,before

CLSS public final dev.hingepoint.check.Finding
cons public init(dev.hingepoint.check.Law,double,double)
meth public boolean holds()
meth public dev.hingepoint.Reason reason()
meth public dev.hingepoint.check.Law law()
meth public double actual()
meth public double expected()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds actual,expected,law

CLSS public final dev.hingepoint.check.Law
cons public init(dev.hingepoint.Message,dev.hingepoint.Where,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,double)
cons public init(dev.hingepoint.Message,dev.hingepoint.Where,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,double,boolean)
meth public boolean isAngle()
meth public dev.hingepoint.Message message()
meth public dev.hingepoint.Where where()
meth public dev.hingepoint.check.Finding on(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
meth public dev.hingepoint.check.Law from(dev.hingepoint.pattern.Draft)
meth public dev.hingepoint.check.Law upTo(dev.hingepoint.pattern.Draft)
meth public double tolerance()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String sentence()
meth public java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft> actual()
meth public java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft> expected()
meth public static dev.hingepoint.check.Law changesLength(java.lang.String,java.lang.String,double,double)
meth public static dev.hingepoint.check.Law changesPaperWidth(java.lang.String,java.lang.String,double,double)
meth public static dev.hingepoint.check.Law changesWidth(java.lang.String,java.lang.String,double,double)
meth public static dev.hingepoint.check.Law equalLegs(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.check.Law keepsDifference(java.util.List<dev.hingepoint.pattern.EdgeRef>,java.util.List<dev.hingepoint.pattern.EdgeRef>,double)
meth public static dev.hingepoint.check.Law keepsLegsEqual(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.check.Law keepsLength(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.check.Law keepsPiece(dev.hingepoint.pattern.Piece)
meth public static dev.hingepoint.check.Law keepsPlace(java.lang.String,java.lang.String)
meth public static dev.hingepoint.check.Law keepsWidth(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.check.Law ofAngles(dev.hingepoint.Message,dev.hingepoint.Where,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,java.util.function.ToDoubleBiFunction<dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft>,double)
meth public static dev.hingepoint.check.Law takesWidth(java.lang.String,java.lang.String,double,double)
meth public static java.util.List<dev.hingepoint.check.Law> keepsOthers(dev.hingepoint.pattern.Draft,java.util.Collection<java.lang.String>)
supr java.lang.Record
hfds UNTOUCHED,actual,expected,isAngle,message,tolerance,where

CLSS public final dev.hingepoint.check.Ledger
cons public init(java.lang.String,java.lang.String,java.util.List<dev.hingepoint.check.Ledger$Entry>,java.util.List<dev.hingepoint.check.Ledger$Entry>,java.util.List<dev.hingepoint.check.Ledger$SeamLine>)
innr public final static EdgeLine
innr public final static Entry
innr public final static GirthLine
innr public final static SeamLine
innr public final static StepLine
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String pattern()
meth public java.lang.String size()
meth public java.util.List<dev.hingepoint.check.Ledger$Entry> alterations()
meth public java.util.List<dev.hingepoint.check.Ledger$Entry> make()
meth public java.util.List<dev.hingepoint.check.Ledger$SeamLine> seams()
meth public static java.util.List<dev.hingepoint.check.Ledger$EdgeLine> edges(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
meth public static java.util.List<dev.hingepoint.check.Ledger$GirthLine> girths(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
meth public static java.util.List<dev.hingepoint.check.Ledger$SeamLine> broken(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
meth public static java.util.List<dev.hingepoint.check.Ledger$SeamLine> seams(dev.hingepoint.pattern.Draft)
supr java.lang.Record
hfds alterations,make,pattern,seams,size

CLSS public final static dev.hingepoint.check.Ledger$EdgeLine
 outer dev.hingepoint.check.Ledger
cons public init(java.lang.String,java.lang.String,double,double)
meth public double after()
meth public double before()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
meth public java.lang.String piece()
supr java.lang.Record
hfds after,before,edge,piece

CLSS public final static dev.hingepoint.check.Ledger$Entry
 outer dev.hingepoint.check.Ledger
cons public init(java.lang.String,java.util.Map<java.lang.String,java.lang.Object>,java.util.List<dev.hingepoint.check.Ledger$StepLine>,java.util.List<dev.hingepoint.check.Ledger$EdgeLine>,java.util.List<dev.hingepoint.check.Ledger$GirthLine>,java.util.List<java.lang.String>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public java.util.List<dev.hingepoint.check.Ledger$EdgeLine> edges()
meth public java.util.List<dev.hingepoint.check.Ledger$GirthLine> girths()
meth public java.util.List<dev.hingepoint.check.Ledger$StepLine> steps()
meth public java.util.List<java.lang.String> notes()
meth public java.util.List<java.lang.String> sentences()
meth public java.util.Map<java.lang.String,java.lang.Object> amounts()
supr java.lang.Record
hfds amounts,edges,girths,name,notes,steps

CLSS public final static dev.hingepoint.check.Ledger$GirthLine
 outer dev.hingepoint.check.Ledger
cons public init(java.lang.String,double,double)
meth public double after()
meth public double before()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String level()
supr java.lang.Record
hfds after,before,level

CLSS public final static dev.hingepoint.check.Ledger$SeamLine
 outer dev.hingepoint.check.Ledger
cons public init(java.lang.String,java.lang.String,double,double,double,boolean)
meth public boolean matches()
meth public double difference()
meth public double easeFrom()
meth public double easeTo()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String join()
meth public java.lang.String to()
supr java.lang.Record
hfds difference,easeFrom,easeTo,join,matches,to

CLSS public final static dev.hingepoint.check.Ledger$StepLine
 outer dev.hingepoint.check.Ledger
cons public init(java.lang.String,java.lang.String)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.lang.String piece()
supr java.lang.Record
hfds caption,piece

CLSS public final dev.hingepoint.check.Measurements
meth public static java.util.Map<java.lang.String,java.lang.Double> of(dev.hingepoint.pattern.Draft)
meth public static java.util.OptionalDouble girth(dev.hingepoint.pattern.Draft,java.lang.String)
supr java.lang.Object

CLSS public final dev.hingepoint.check.SeamWalk
meth public static dev.hingepoint.check.Walked of(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Seam)
meth public static java.util.List<dev.hingepoint.check.Walked> all(dev.hingepoint.pattern.Draft)
supr java.lang.Object
hfds OPEN_ENDS,draft,seams

CLSS public final dev.hingepoint.check.Walked
cons public init(dev.hingepoint.pattern.Seam,double,double,java.util.List<dev.hingepoint.check.Walked$NotchGap>,java.util.List<dev.hingepoint.check.Walked$RunOn>)
innr public final static NotchGap
innr public final static RunOn
meth public boolean lengthMatches()
meth public dev.hingepoint.pattern.Seam seam()
meth public double difference()
meth public double joinLength()
meth public double toLength()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.check.Walked$NotchGap> notches()
meth public java.util.List<dev.hingepoint.check.Walked$RunOn> ends()
meth public java.util.List<java.lang.String> complaints()
supr java.lang.Record
hfds RUNS_ON,ends,joinLength,notches,seam,toLength

CLSS public final static dev.hingepoint.check.Walked$NotchGap
 outer dev.hingepoint.check.Walked
cons public init(java.lang.String,double,double)
meth public double difference()
meth public double onJoin()
meth public double onTo()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
supr java.lang.Record
hfds name,onJoin,onTo

CLSS public final static dev.hingepoint.check.Walked$RunOn
 outer dev.hingepoint.check.Walked
cons public init(java.lang.String,java.lang.String,double)
meth public double degrees()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
meth public java.lang.String otherEdge()
supr java.lang.Record
hfds degrees,edge,otherEdge

CLSS abstract interface dev.hingepoint.check.package-info

CLSS public final dev.hingepoint.curve.Bisection
meth public static double largest(double,double,double,java.util.function.DoublePredicate)
meth public static double largest(double,double,java.util.function.DoublePredicate)
meth public static java.util.OptionalDouble zero(double,double,java.util.function.DoubleUnaryOperator)
supr java.lang.Object
hfds HALVINGS

CLSS public final dev.hingepoint.curve.Box
cons public init(double,double,double,double)
meth public dev.hingepoint.curve.Box grownBy(double)
meth public dev.hingepoint.curve.Box moved(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Box union(dev.hingepoint.curve.Box)
meth public dev.hingepoint.curve.Point centre()
meth public double bottom()
meth public double distanceTo(dev.hingepoint.curve.Point)
meth public double height()
meth public double left()
meth public double right()
meth public double top()
meth public double width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> corners()
meth public static dev.hingepoint.curve.Box around(java.util.Collection<dev.hingepoint.curve.Point>)
meth public static dev.hingepoint.curve.Box of(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
supr java.lang.Record
hfds bottom,left,right,top

CLSS public final dev.hingepoint.curve.Cubic
cons public init(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
intf dev.hingepoint.curve.Segment
meth public boolean isStraight(double)
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.curve.Box hull()
meth public dev.hingepoint.curve.Cubic moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.curve.Cubic part(double,double)
meth public dev.hingepoint.curve.Cubic reversed()
meth public dev.hingepoint.curve.Point at(double)
meth public dev.hingepoint.curve.Point end()
meth public dev.hingepoint.curve.Point endHandle()
meth public dev.hingepoint.curve.Point start()
meth public dev.hingepoint.curve.Point startHandle()
meth public dev.hingepoint.curve.Vector tangent(double)
meth public double curvature(double)
meth public double farthest(dev.hingepoint.curve.Vector)
meth public double lengthTo(double)
meth public double nearest(dev.hingepoint.curve.Point)
meth public double parameterAt(double)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int flatteningSteps(double)
meth public java.util.List<java.lang.Double> crossings(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector)
meth public java.util.List<java.lang.Double> extrema()
meth public java.util.List<java.lang.Double> inflections()
meth public static dev.hingepoint.curve.Cubic straight(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
meth public void flatten(double,java.util.function.Consumer<dev.hingepoint.curve.Point>)
supr java.lang.Record
hfds SAME_POINT,end,endHandle,start,startHandle

CLSS public final dev.hingepoint.curve.Fairing
meth public static dev.hingepoint.curve.Path corner(dev.hingepoint.curve.Path,dev.hingepoint.curve.Path)
meth public static dev.hingepoint.curve.Path turnedAtEnd(dev.hingepoint.curve.Path,dev.hingepoint.curve.Vector,double)
meth public static double halfBend(dev.hingepoint.curve.Path,dev.hingepoint.curve.Path)
meth public static double reach(dev.hingepoint.curve.Path,dev.hingepoint.curve.Path)
meth public static double toCorner(dev.hingepoint.curve.Path)
supr java.lang.Object
hfds LONGEST,LOSS,NO_BEND,SAG

CLSS public final dev.hingepoint.curve.Line
cons public init(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
intf dev.hingepoint.curve.Segment
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.curve.Box hull()
meth public dev.hingepoint.curve.Line moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.curve.Line part(double,double)
meth public dev.hingepoint.curve.Line reversed()
meth public dev.hingepoint.curve.Point at(double)
meth public dev.hingepoint.curve.Point end()
meth public dev.hingepoint.curve.Point start()
meth public dev.hingepoint.curve.Vector step()
meth public dev.hingepoint.curve.Vector tangent(double)
meth public double curvature(double)
meth public double farthest(dev.hingepoint.curve.Vector)
meth public double lengthTo(double)
meth public double nearest(dev.hingepoint.curve.Point)
meth public double parameterAt(double)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.lang.Double> crossings(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector)
meth public void flatten(double,java.util.function.Consumer<dev.hingepoint.curve.Point>)
supr java.lang.Record
hfds end,start

CLSS public final dev.hingepoint.curve.Motion
cons public init(double,double,double,double,double,double)
fld public final static dev.hingepoint.curve.Motion STAY
meth public dev.hingepoint.curve.Motion inverse()
meth public dev.hingepoint.curve.Motion part(double)
meth public dev.hingepoint.curve.Motion then(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.curve.Point of(dev.hingepoint.curve.Point)
meth public dev.hingepoint.curve.Vector of(dev.hingepoint.curve.Vector)
meth public double angle()
meth public double dx()
meth public double dy()
meth public double scale()
meth public double xx()
meth public double xy()
meth public double yx()
meth public double yy()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> of(java.util.List<dev.hingepoint.curve.Point>)
meth public static dev.hingepoint.curve.Motion between(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector,dev.hingepoint.curve.Vector,dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector,dev.hingepoint.curve.Vector)
meth public static dev.hingepoint.curve.Motion enlargement(double)
meth public static dev.hingepoint.curve.Motion fold(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
meth public static dev.hingepoint.curve.Motion reaching(dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
meth public static dev.hingepoint.curve.Motion shear(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector,double)
meth public static dev.hingepoint.curve.Motion shift(dev.hingepoint.curve.Vector)
meth public static dev.hingepoint.curve.Motion stretch(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector,double)
meth public static dev.hingepoint.curve.Motion turn(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector,dev.hingepoint.curve.Vector)
meth public static dev.hingepoint.curve.Motion turn(dev.hingepoint.curve.Point,double)
supr java.lang.Record
hfds RIGID,dx,dy,xx,xy,yx,yy

CLSS public final dev.hingepoint.curve.Offset
fld public final static double MITRE_LIMIT = 2.5
meth public static java.util.List<dev.hingepoint.curve.Point> polyline(dev.hingepoint.curve.Path,double,double)
supr java.lang.Object
hfds CURVATURE_SAMPLES,MOST_HALVINGS,curve,distance,points,tolerance
hcls Place

CLSS public final dev.hingepoint.curve.Parallel
meth public static dev.hingepoint.curve.Path of(dev.hingepoint.curve.Path,double,double)
supr java.lang.Object
hfds CHECKS,MOST_HALVINGS

CLSS public final dev.hingepoint.curve.Path
meth public !varargs static dev.hingepoint.curve.Path of(dev.hingepoint.curve.Segment[])
meth public !varargs static dev.hingepoint.curve.Path through(dev.hingepoint.curve.Point[])
meth public boolean equals(java.lang.Object)
meth public boolean isCloseTo(dev.hingepoint.curve.Path,double)
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.curve.Box hull()
meth public dev.hingepoint.curve.Path givingWay(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Path moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.curve.Path part(dev.hingepoint.curve.Position,dev.hingepoint.curve.Position)
meth public dev.hingepoint.curve.Path part(double,double)
meth public dev.hingepoint.curve.Path reversed()
meth public dev.hingepoint.curve.Path then(dev.hingepoint.curve.Path)
meth public dev.hingepoint.curve.Path withEnd(dev.hingepoint.curve.Point)
meth public dev.hingepoint.curve.Path withEndHandle(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Path withEndTangent(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Path withLength(double)
meth public dev.hingepoint.curve.Path withStart(dev.hingepoint.curve.Point)
meth public dev.hingepoint.curve.Path withStartTangent(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Point at(dev.hingepoint.curve.Position)
meth public dev.hingepoint.curve.Point at(double)
meth public dev.hingepoint.curve.Point end()
meth public dev.hingepoint.curve.Point start()
meth public dev.hingepoint.curve.Position endPosition()
meth public dev.hingepoint.curve.Position farthest(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Position nearest(dev.hingepoint.curve.Point)
meth public dev.hingepoint.curve.Position positionAt(double)
meth public dev.hingepoint.curve.Position startPosition()
meth public dev.hingepoint.curve.Vector endTangent()
meth public dev.hingepoint.curve.Vector startTangent()
meth public dev.hingepoint.curve.Vector tangent(dev.hingepoint.curve.Position)
meth public double apart(dev.hingepoint.curve.Path)
meth public double distanceAlong(dev.hingepoint.curve.Position)
meth public double distanceTo(dev.hingepoint.curve.Point)
meth public double length()
meth public double turnedBack()
meth public int hashCode()
meth public java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> flatten(double)
meth public java.util.List<dev.hingepoint.curve.Position> corners(double)
meth public java.util.List<dev.hingepoint.curve.Position> crossings(dev.hingepoint.curve.Line)
meth public java.util.List<dev.hingepoint.curve.Position> crossings(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector)
meth public java.util.List<dev.hingepoint.curve.Segment> segments()
meth public java.util.stream.Stream<dev.hingepoint.curve.Point> controlPoints()
meth public static dev.hingepoint.curve.Path of(java.util.List<dev.hingepoint.curve.Segment>)
meth public static dev.hingepoint.curve.Path through(java.util.List<dev.hingepoint.curve.Point>)
supr java.lang.Object
hfds NEAR_JOINT,RUN_ON,segments,travelled

CLSS public final dev.hingepoint.curve.Point
cons public init(double,double)
meth public boolean isCloseTo(dev.hingepoint.curve.Point,double)
meth public dev.hingepoint.curve.Point midpoint(dev.hingepoint.curve.Point)
meth public dev.hingepoint.curve.Point minus(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Point plus(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Point towards(dev.hingepoint.curve.Point,double)
meth public dev.hingepoint.curve.Vector minus(dev.hingepoint.curve.Point)
meth public double distanceTo(dev.hingepoint.curve.Point)
meth public double x()
meth public double y()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds x,y

CLSS public final dev.hingepoint.curve.Position
cons public init(int,double)
intf java.lang.Comparable<dev.hingepoint.curve.Position>
meth public double t()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int compareTo(dev.hingepoint.curve.Position)
meth public int segment()
supr java.lang.Record
hfds segment,t

CLSS public final dev.hingepoint.curve.Refit
meth public static dev.hingepoint.curve.Cubic asCubic(dev.hingepoint.curve.Segment)
meth public static dev.hingepoint.curve.Cubic cubic(dev.hingepoint.curve.Path)
meth public static double deviation(dev.hingepoint.curve.Cubic,dev.hingepoint.curve.Path)
supr java.lang.Object
hfds FIRST_DAMPING,GOOD_ENOUGH,ROUNDS,SAMPLES,SHORTEST_HANDLE,TINY

CLSS public abstract interface dev.hingepoint.curve.Segment
meth public abstract dev.hingepoint.curve.Box bounds()
meth public abstract dev.hingepoint.curve.Box hull()
meth public abstract dev.hingepoint.curve.Point at(double)
meth public abstract dev.hingepoint.curve.Point end()
meth public abstract dev.hingepoint.curve.Point start()
meth public abstract dev.hingepoint.curve.Segment moved(dev.hingepoint.curve.Motion)
meth public abstract dev.hingepoint.curve.Segment part(double,double)
meth public abstract dev.hingepoint.curve.Segment reversed()
meth public abstract dev.hingepoint.curve.Vector tangent(double)
meth public abstract double curvature(double)
meth public abstract double farthest(dev.hingepoint.curve.Vector)
meth public abstract double lengthTo(double)
meth public abstract double nearest(dev.hingepoint.curve.Point)
meth public abstract double parameterAt(double)
meth public abstract java.util.List<java.lang.Double> crossings(dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector)
meth public abstract void flatten(double,java.util.function.Consumer<dev.hingepoint.curve.Point>)
meth public double length()

CLSS public final dev.hingepoint.curve.Tolerance
fld public final static double COINCIDENT = 1.0E-6
fld public final static double CORNER
fld public final static double FLATTENING = 0.01
fld public final static double JOINING = 0.1
fld public final static double LAST_DECIMAL = 1.0E-4
fld public final static double LENGTH = 1.0E-9
fld public final static double LEVEL_REACH = 5.0
fld public final static double PARALLEL = 1.0E-6
fld public final static double REFIT = 0.1
fld public final static double SEAM_MATCH = 1.5875
supr java.lang.Object

CLSS public final dev.hingepoint.curve.Vector
cons public init(double,double)
fld public final static dev.hingepoint.curve.Vector ZERO
meth public dev.hingepoint.curve.Vector left()
meth public dev.hingepoint.curve.Vector minus(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Vector negated()
meth public dev.hingepoint.curve.Vector plus(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Vector right()
meth public dev.hingepoint.curve.Vector times(double)
meth public dev.hingepoint.curve.Vector turned(double)
meth public dev.hingepoint.curve.Vector unit()
meth public double angleTo(dev.hingepoint.curve.Vector)
meth public double cross(dev.hingepoint.curve.Vector)
meth public double dot(dev.hingepoint.curve.Vector)
meth public double length()
meth public double x()
meth public double y()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public static dev.hingepoint.curve.Vector ofAngle(double)
supr java.lang.Record
hfds x,y

CLSS abstract interface dev.hingepoint.curve.package-info

CLSS public final dev.hingepoint.fit.Body
cons public init(java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>,java.util.Optional<dev.hingepoint.fit.Observed>,java.util.Optional<dev.hingepoint.fit.Cloth>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> lengths()
meth public java.util.Optional<dev.hingepoint.fit.Cloth> cloth()
meth public java.util.Optional<dev.hingepoint.fit.Observed> observed()
meth public java.util.OptionalDouble mm(dev.hingepoint.fit.Measure)
meth public java.util.OptionalDouble mm(java.lang.String)
meth public static dev.hingepoint.fit.Body of(java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
supr java.lang.Record
hfds MOST,SWAPPED,cloth,lengths,observed
hcls Slip

CLSS public final dev.hingepoint.fit.Cloth
cons public init(double,double)
meth public double across()
meth public double down()
meth public double leastGirth(double)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds across,down

CLSS public final dev.hingepoint.fit.Ease
cons public init(java.lang.String,java.lang.String,double,double,double,double,double,double)
meth public boolean canBeWorn()
meth public boolean isLoose()
meth public boolean isRight()
meth public boolean isShort()
meth public double aim()
meth public double body()
meth public double ease()
meth public double garment()
meth public double least()
meth public double leastGirth()
meth public double most()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String level()
meth public java.lang.String measurement()
supr java.lang.Record
hfds ON_THE_MARK,aim,body,garment,least,leastGirth,level,measurement,most

CLSS public final dev.hingepoint.fit.FitCheck
fld public final static java.util.List<java.lang.String> LEVELS
meth public static dev.hingepoint.fit.Body charted(dev.hingepoint.pattern.Pattern,java.lang.String)
meth public static java.util.List<dev.hingepoint.fit.Ease> ease(dev.hingepoint.pattern.Draft,dev.hingepoint.fit.Body,dev.hingepoint.fit.FitRules)
meth public static java.util.List<dev.hingepoint.fit.Ease> ease(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft,dev.hingepoint.fit.Body,dev.hingepoint.fit.FitRules)
supr java.lang.Object

CLSS public final dev.hingepoint.fit.FitRules
cons public init(double,double,double,double,boolean)
fld public final static dev.hingepoint.fit.FitRules USUAL
meth public boolean exact()
meth public dev.hingepoint.fit.FitRules exactly()
meth public double headGirth()
meth public double leastBustKnit()
meth public double leastBustWoven()
meth public double stretchShare()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds exact,headGirth,leastBustKnit,leastBustWoven,stretchShare

CLSS public final dev.hingepoint.fit.GettingIn
innr public final static Narrow
meth public static java.util.List<dev.hingepoint.fit.GettingIn$Narrow> into(dev.hingepoint.pattern.Draft,dev.hingepoint.fit.Body,dev.hingepoint.fit.FitRules)
meth public static java.util.List<dev.hingepoint.fit.GettingIn$Narrow> into(dev.hingepoint.pattern.Draft,dev.hingepoint.fit.Body,dev.hingepoint.fit.FitRules,java.util.function.ToDoubleFunction<dev.hingepoint.pattern.Piece>)
supr java.lang.Object

CLSS public final static dev.hingepoint.fit.GettingIn$Narrow
 outer dev.hingepoint.fit.GettingIn
cons public init(java.lang.String,double,java.lang.String,double,java.util.OptionalDouble)
meth public boolean isWideEnough()
meth public dev.hingepoint.Message message()
meth public double needed()
meth public double opens()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String passes()
meth public java.lang.String place()
meth public java.lang.String sentence()
meth public java.util.OptionalDouble opening()
supr java.lang.Record
hfds needed,opening,opens,passes,place

CLSS public final !enum dev.hingepoint.fit.Measure
fld public final static dev.hingepoint.fit.Measure ARM_LENGTH
fld public final static dev.hingepoint.fit.Measure BACK_WAIST_LENGTH
fld public final static dev.hingepoint.fit.Measure BACK_WIDTH
fld public final static dev.hingepoint.fit.Measure BUST_POINT_TO_BUST_POINT
fld public final static dev.hingepoint.fit.Measure FRONT_WAIST_LENGTH
fld public final static dev.hingepoint.fit.Measure FULL_BUST
fld public final static dev.hingepoint.fit.Measure HEAD_GIRTH
fld public final static dev.hingepoint.fit.Measure HEIGHT
fld public final static dev.hingepoint.fit.Measure HIGH_HIP
fld public final static dev.hingepoint.fit.Measure HIP
fld public final static dev.hingepoint.fit.Measure SHOULDER
fld public final static dev.hingepoint.fit.Measure SHOULDER_TO_BUST_POINT
fld public final static dev.hingepoint.fit.Measure SIDE_LENGTH
fld public final static dev.hingepoint.fit.Measure UPPER_ARM
fld public final static dev.hingepoint.fit.Measure UPPER_BUST
fld public final static dev.hingepoint.fit.Measure WAIST
fld public final static dev.hingepoint.fit.Measure WAIST_TO_KNEE
meth public double least()
meth public double most()
meth public java.lang.String runs()
meth public java.lang.String words()
meth public static dev.hingepoint.fit.Measure valueOf(java.lang.String)
meth public static dev.hingepoint.fit.Measure[] values()
meth public static java.util.Optional<dev.hingepoint.fit.Measure> named(java.lang.String)
supr java.lang.Enum<dev.hingepoint.fit.Measure>
hfds least,most,runs,words

CLSS public final dev.hingepoint.fit.Observed
cons public init(dev.hingepoint.pattern.Length,java.util.Optional<dev.hingepoint.fit.Observed$Run>,java.util.Optional<dev.hingepoint.fit.Observed$Hem>,boolean)
innr public final static !enum Hem
innr public final static !enum Run
meth public boolean onAltered()
meth public dev.hingepoint.pattern.Length folds()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Optional<dev.hingepoint.fit.Observed$Hem> hem()
meth public java.util.Optional<dev.hingepoint.fit.Observed$Run> run()
supr java.lang.Record
hfds folds,hem,onAltered,run

CLSS public final static !enum dev.hingepoint.fit.Observed$Hem
 outer dev.hingepoint.fit.Observed
fld public final static dev.hingepoint.fit.Observed$Hem DROPS
fld public final static dev.hingepoint.fit.Observed$Hem LEVEL
fld public final static dev.hingepoint.fit.Observed$Hem RIDES_UP
meth public java.lang.String words()
meth public static dev.hingepoint.fit.Observed$Hem valueOf(java.lang.String)
meth public static dev.hingepoint.fit.Observed$Hem[] values()
supr java.lang.Enum<dev.hingepoint.fit.Observed$Hem>
hfds words

CLSS public final static !enum dev.hingepoint.fit.Observed$Run
 outer dev.hingepoint.fit.Observed
fld public final static dev.hingepoint.fit.Observed$Run ALL_ROUND
fld public final static dev.hingepoint.fit.Observed$Run BACK_ONLY
fld public final static dev.hingepoint.fit.Observed$Run BELOW_THE_SEAT
meth public java.lang.String words()
meth public static dev.hingepoint.fit.Observed$Run valueOf(java.lang.String)
meth public static dev.hingepoint.fit.Observed$Run[] values()
supr java.lang.Enum<dev.hingepoint.fit.Observed$Run>
hfds words

CLSS public final dev.hingepoint.fit.Plan
cons public init(java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.fit.PlanLine>,java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.List<dev.hingepoint.fit.Ease>,java.util.List<dev.hingepoint.fit.Ease>,java.util.List<java.lang.String>,dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
meth public boolean holdsUp()
meth public dev.hingepoint.alter.Order order()
meth public dev.hingepoint.pattern.Draft drafted()
meth public dev.hingepoint.pattern.Draft planned()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String size()
meth public java.util.List<dev.hingepoint.fit.Ease> after()
meth public java.util.List<dev.hingepoint.fit.Ease> before()
meth public java.util.List<dev.hingepoint.fit.PlanLine> lines()
meth public java.util.List<dev.hingepoint.pattern.AlterationRequest> alterations()
meth public java.util.List<java.lang.String> problems()
meth public java.util.Optional<java.lang.String> front()
supr java.lang.Record
hfds after,alterations,before,drafted,front,lines,planned,problems,size

CLSS public final dev.hingepoint.fit.PlanLine
cons public init(dev.hingepoint.fit.PlanLine$Topic,java.lang.String,java.util.Optional<dev.hingepoint.fit.PlanLine$Compared>,java.lang.String,java.lang.String,java.util.Optional<dev.hingepoint.pattern.AlterationRequest>)
innr public final static !enum Topic
innr public final static Compared
meth public dev.hingepoint.fit.PlanLine$Topic topic()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String amount()
meth public java.lang.String rule()
meth public java.lang.String source()
meth public java.util.Optional<dev.hingepoint.fit.PlanLine$Compared> compared()
meth public java.util.Optional<dev.hingepoint.pattern.AlterationRequest> request()
supr java.lang.Record
hfds COMMON_PRACTICE,amount,compared,request,rule,source,topic

CLSS public final static dev.hingepoint.fit.PlanLine$Compared
 outer dev.hingepoint.fit.PlanLine
cons public init(java.lang.String,dev.hingepoint.pattern.Length,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.pattern.Length body()
meth public dev.hingepoint.pattern.Length difference()
meth public dev.hingepoint.pattern.Length pattern()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String measurement()
supr java.lang.Record
hfds body,measurement,pattern

CLSS public final static !enum dev.hingepoint.fit.PlanLine$Topic
 outer dev.hingepoint.fit.PlanLine
fld public final static dev.hingepoint.fit.PlanLine$Topic BACK_WAIST
fld public final static dev.hingepoint.fit.PlanLine$Topic BUST
fld public final static dev.hingepoint.fit.PlanLine$Topic BUST_POINT
fld public final static dev.hingepoint.fit.PlanLine$Topic CLOTH
fld public final static dev.hingepoint.fit.PlanLine$Topic GETTING_IN
fld public final static dev.hingepoint.fit.PlanLine$Topic LENGTHS
fld public final static dev.hingepoint.fit.PlanLine$Topic SHOULDERS
fld public final static dev.hingepoint.fit.PlanLine$Topic SIZE
fld public final static dev.hingepoint.fit.PlanLine$Topic SLEEVE
fld public final static dev.hingepoint.fit.PlanLine$Topic WAIST_AND_HIP
meth public java.lang.String words()
meth public static dev.hingepoint.fit.PlanLine$Topic valueOf(java.lang.String)
meth public static dev.hingepoint.fit.PlanLine$Topic[] values()
supr java.lang.Enum<dev.hingepoint.fit.PlanLine$Topic>
hfds words

CLSS public final dev.hingepoint.fit.Planner
meth public static dev.hingepoint.fit.Plan plan(dev.hingepoint.pattern.Pattern,dev.hingepoint.fit.Body)
meth public static dev.hingepoint.fit.Plan plan(dev.hingepoint.pattern.Pattern,dev.hingepoint.fit.Body,dev.hingepoint.fit.FitRules)
supr java.lang.Object
hfds FAR_SHOULDER,alterations,body,chart,drafted,lines,problems,rules,working

CLSS abstract interface dev.hingepoint.fit.package-info

CLSS public final dev.hingepoint.make.Choices
meth public static dev.hingepoint.alter.Alteration named(java.lang.String)
meth public static dev.hingepoint.alter.Altered make(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.AlterationRequest)
meth public static java.util.List<dev.hingepoint.alter.Alteration> all()
supr java.lang.Object
hfds ALL

CLSS public final dev.hingepoint.make.MadeUp
meth public static dev.hingepoint.alter.Fitting of(dev.hingepoint.alter.Fitting,java.util.List<dev.hingepoint.pattern.AlterationRequest>)
meth public static dev.hingepoint.alter.Fitting of(dev.hingepoint.pattern.Pattern,dev.hingepoint.alter.Order,java.util.List<dev.hingepoint.pattern.AlterationRequest>)
supr java.lang.Object

CLSS abstract interface dev.hingepoint.make.package-info

CLSS public final dev.hingepoint.move.Cut
cons public init(java.lang.String,java.util.List<dev.hingepoint.curve.Path>,java.util.List<dev.hingepoint.move.Cut$PartMotion>,java.util.Optional<dev.hingepoint.pattern.Place>)
innr public final static PartMotion
intf dev.hingepoint.move.Move
meth public !varargs static dev.hingepoint.move.Cut along(java.lang.String,dev.hingepoint.curve.Path[])
meth public dev.hingepoint.move.Cut folding(dev.hingepoint.pattern.Place,dev.hingepoint.curve.Motion)
meth public dev.hingepoint.move.Cut moving(dev.hingepoint.pattern.Place,dev.hingepoint.curve.Motion)
meth public dev.hingepoint.move.Cut withGrainOn(dev.hingepoint.pattern.Place)
meth public dev.hingepoint.move.Move$Moved on(dev.hingepoint.pattern.Piece)
meth public double opens(dev.hingepoint.move.PaperMap,dev.hingepoint.curve.Path,dev.hingepoint.curve.Vector)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.util.List<dev.hingepoint.curve.Path> lines()
meth public java.util.List<dev.hingepoint.move.Cut$PartMotion> motions()
meth public java.util.Optional<dev.hingepoint.pattern.Place> grain()
supr java.lang.Record
hfds BESIDE,ONE_PLACE,caption,grain,lines,motions
hcls Run

CLSS public final static dev.hingepoint.move.Cut$PartMotion
 outer dev.hingepoint.move.Cut
cons public init(dev.hingepoint.pattern.Place,dev.hingepoint.curve.Motion,boolean)
meth public boolean isFolded()
meth public dev.hingepoint.curve.Motion motion()
meth public dev.hingepoint.pattern.Place holding()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds holding,isFolded,motion

CLSS public final dev.hingepoint.move.Divide
cons public init(java.lang.String,dev.hingepoint.curve.Path,dev.hingepoint.pattern.Place,java.lang.String,java.lang.String,java.lang.String)
innr public final static Divided
meth public dev.hingepoint.curve.Path styleLine()
meth public dev.hingepoint.move.Divide$Divided on(dev.hingepoint.pattern.Piece)
meth public dev.hingepoint.pattern.Place holding()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.lang.String first()
meth public java.lang.String seam()
meth public java.lang.String second()
supr java.lang.Record
hfds GRAIN,caption,first,holding,seam,second,styleLine

CLSS public final static dev.hingepoint.move.Divide$Divided
 outer dev.hingepoint.move.Divide
cons public init(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Seam,dev.hingepoint.move.Step)
meth public dev.hingepoint.move.Step step()
meth public dev.hingepoint.pattern.Piece first()
meth public dev.hingepoint.pattern.Piece second()
meth public dev.hingepoint.pattern.Seam seam()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds first,seam,second,step

CLSS public abstract interface dev.hingepoint.move.Move
innr public final static Moved
meth public abstract dev.hingepoint.move.Move$Moved on(dev.hingepoint.pattern.Piece)

CLSS public final static dev.hingepoint.move.Move$Moved
 outer dev.hingepoint.move.Move
cons public init(dev.hingepoint.pattern.Piece,dev.hingepoint.move.PaperMap,dev.hingepoint.move.Step)
meth public dev.hingepoint.move.PaperMap map()
meth public dev.hingepoint.move.Step step()
meth public dev.hingepoint.pattern.Piece piece()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds map,piece,step

CLSS public final dev.hingepoint.move.Paper
cons public init(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Piece,dev.hingepoint.move.PaperMap,java.util.List<dev.hingepoint.move.Step>)
meth public dev.hingepoint.move.Paper marked(dev.hingepoint.pattern.Piece)
meth public dev.hingepoint.move.Paper marked(java.lang.String,dev.hingepoint.pattern.Piece)
meth public dev.hingepoint.move.Paper then(dev.hingepoint.move.Move)
meth public dev.hingepoint.move.PaperMap map()
meth public dev.hingepoint.pattern.Piece original()
meth public dev.hingepoint.pattern.Piece piece()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.move.Step> steps()
meth public static dev.hingepoint.move.Paper of(dev.hingepoint.pattern.Piece)
supr java.lang.Record
hfds map,original,piece,steps

CLSS public abstract interface dev.hingepoint.move.PaperMap
 anno 0 java.lang.FunctionalInterface()
fld public final static dev.hingepoint.move.PaperMap STAY
meth public abstract dev.hingepoint.curve.Point of(dev.hingepoint.curve.Point)
meth public dev.hingepoint.move.PaperMap then(dev.hingepoint.move.PaperMap)

CLSS public final dev.hingepoint.move.Redraw
cons public init(java.lang.String,java.util.List<dev.hingepoint.move.Redraw$Stretch>)
innr public final static Stretch
intf dev.hingepoint.move.Move
meth public dev.hingepoint.move.Move$Moved on(dev.hingepoint.pattern.Piece)
meth public dev.hingepoint.move.Redraw and(dev.hingepoint.move.Redraw)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.util.List<dev.hingepoint.move.Redraw$Stretch> stretches()
meth public static dev.hingepoint.move.Redraw between(java.lang.String,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot,dev.hingepoint.curve.Path)
meth public static dev.hingepoint.move.Redraw bridged(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot,double)
meth public static dev.hingepoint.move.Redraw bridged(java.lang.String,dev.hingepoint.pattern.Spot,dev.hingepoint.curve.Vector,dev.hingepoint.pattern.Spot,dev.hingepoint.curve.Vector)
meth public static dev.hingepoint.move.Redraw end(java.lang.String,dev.hingepoint.pattern.Piece,java.lang.String,java.lang.String,double,dev.hingepoint.curve.Path)
meth public static dev.hingepoint.move.Redraw faired(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot,double)
meth public static dev.hingepoint.move.Redraw faired(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot,double)
meth public static dev.hingepoint.move.Redraw runOn(java.lang.String,dev.hingepoint.pattern.Piece,java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.move.Redraw stepClosed(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot,double)
meth public static dev.hingepoint.move.Redraw straight(java.lang.String,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot)
meth public static dev.hingepoint.move.Redraw whole(java.lang.String,dev.hingepoint.pattern.Piece,java.lang.String,java.lang.String,dev.hingepoint.curve.Path)
meth public static double reach(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot)
meth public static double reach(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot)
supr java.lang.Record
hfds caption,stretches

CLSS public final static dev.hingepoint.move.Redraw$Stretch
 outer dev.hingepoint.move.Redraw
cons public init(java.lang.String,dev.hingepoint.curve.Position,dev.hingepoint.curve.Position,dev.hingepoint.curve.Path)
cons public init(java.lang.String,dev.hingepoint.curve.Position,dev.hingepoint.curve.Position,java.util.Optional<dev.hingepoint.curve.Path>)
meth public dev.hingepoint.curve.Path course()
meth public dev.hingepoint.curve.Position from()
meth public dev.hingepoint.curve.Position to()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
meth public java.util.Optional<dev.hingepoint.curve.Path> newCourse()
supr java.lang.Record
hfds edge,from,newCourse,to

CLSS public final dev.hingepoint.move.Rotation
cons public init(dev.hingepoint.move.Cut,dev.hingepoint.curve.Motion,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.pattern.Spot)
meth public dev.hingepoint.curve.Motion motion()
meth public dev.hingepoint.curve.Point kept()
meth public dev.hingepoint.curve.Point turned()
meth public dev.hingepoint.curve.Point turnedOnto()
meth public dev.hingepoint.move.Cut cut()
meth public dev.hingepoint.pattern.Spot opened()
meth public double angle()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> gap()
meth public static dev.hingepoint.move.Rotation of(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.pattern.Spot,double)
supr java.lang.Record
hfds cut,kept,motion,opened,turned

CLSS public final dev.hingepoint.move.Step
cons public init(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Piece,java.util.List<dev.hingepoint.curve.Path>,java.util.List<dev.hingepoint.curve.Point>,java.util.List<dev.hingepoint.move.Step$Part>,java.util.List<dev.hingepoint.curve.Path>)
innr public final static Part
meth public boolean isCut()
meth public dev.hingepoint.pattern.Piece after()
meth public dev.hingepoint.pattern.Piece before()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.util.List<dev.hingepoint.curve.Path> fills()
meth public java.util.List<dev.hingepoint.curve.Path> lines()
meth public java.util.List<dev.hingepoint.curve.Point> hinges()
meth public java.util.List<dev.hingepoint.move.Step$Part> parts()
meth public static dev.hingepoint.move.Step of(java.lang.String,dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Piece)
supr java.lang.Record
hfds after,before,caption,fills,hinges,lines,parts

CLSS public final static dev.hingepoint.move.Step$Part
 outer dev.hingepoint.move.Step
cons public init(dev.hingepoint.curve.Path,dev.hingepoint.curve.Motion,boolean)
meth public boolean isFolded()
meth public boolean isMoved()
meth public dev.hingepoint.curve.Motion motion()
meth public dev.hingepoint.curve.Path outline()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds isFolded,motion,outline

CLSS public final dev.hingepoint.move.StretchedDarts
meth public static dev.hingepoint.move.Paper on(dev.hingepoint.move.Paper,dev.hingepoint.curve.Vector)
supr java.lang.Object

CLSS public final dev.hingepoint.move.Trim
cons public init(java.lang.String,java.lang.String,dev.hingepoint.curve.Path)
intf dev.hingepoint.move.Move
meth public dev.hingepoint.curve.Path course()
meth public dev.hingepoint.move.Move$Moved on(dev.hingepoint.pattern.Piece)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.lang.String edge()
supr java.lang.Record
hfds CUT,caption,course,edge

CLSS abstract interface dev.hingepoint.move.package-info

CLSS abstract interface dev.hingepoint.package-info

CLSS public final dev.hingepoint.pattern.Across
cons public init(dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot)
meth public dev.hingepoint.curve.Line line()
meth public dev.hingepoint.pattern.Spot end()
meth public dev.hingepoint.pattern.Spot on(java.lang.String)
meth public dev.hingepoint.pattern.Spot start()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.lang.String> edges()
meth public static dev.hingepoint.pattern.Across through(dev.hingepoint.pattern.Piece,dev.hingepoint.curve.Point,dev.hingepoint.curve.Vector)
supr java.lang.Record
hfds end,start

CLSS public final dev.hingepoint.pattern.Allowances
cons public init(java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
fld public final static dev.hingepoint.pattern.Length HOME_SEWING
meth public dev.hingepoint.pattern.Allowances with(java.lang.String,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.pattern.Length of(dev.hingepoint.pattern.Piece,dev.hingepoint.pattern.Edge)
meth public dev.hingepoint.pattern.Length usual()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> byName()
supr java.lang.Record
hfds byName

CLSS public final dev.hingepoint.pattern.AlterationRequest
cons public init(java.lang.String,java.util.Map<java.lang.String,java.lang.Object>)
meth public dev.hingepoint.pattern.AlterationRequest with(java.lang.String,java.lang.Object)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public java.util.Map<java.lang.String,java.lang.Object> options()
meth public static dev.hingepoint.pattern.AlterationRequest of(java.lang.String)
supr java.lang.Record
hfds name,options

CLSS public final dev.hingepoint.pattern.BodyChart
cons public init(dev.hingepoint.pattern.Unit,java.util.Map<java.lang.String,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>>)
fld public final static dev.hingepoint.pattern.BodyChart NONE
meth public dev.hingepoint.pattern.Unit unit()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.lang.String> sizes()
meth public java.util.Map<java.lang.String,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>> bySize()
meth public java.util.Optional<java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>> body(java.lang.String)
meth public static java.util.Optional<java.lang.String> column(java.lang.String)
supr java.lang.Record
hfds COLUMNS,bySize,unit

CLSS public final dev.hingepoint.pattern.Card
cons public init(java.lang.String,java.lang.String,java.util.Optional<dev.hingepoint.pattern.Length>,double,double,dev.hingepoint.pattern.BodyChart,java.util.List<dev.hingepoint.pattern.Seam>,dev.hingepoint.pattern.Allowances,java.util.List<dev.hingepoint.pattern.Opening>,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>,dev.hingepoint.pattern.Lays,java.util.Optional<dev.hingepoint.pattern.Card$Altered>)
innr public final static Altered
meth public boolean isKnit()
meth public dev.hingepoint.pattern.Allowances allowances()
meth public dev.hingepoint.pattern.BodyChart bodyChart()
meth public dev.hingepoint.pattern.Card withAltered(dev.hingepoint.pattern.Card$Altered)
meth public dev.hingepoint.pattern.Card withSeams(java.util.List<dev.hingepoint.pattern.Seam>)
meth public dev.hingepoint.pattern.Construction construction()
meth public dev.hingepoint.pattern.Lays lays()
meth public double stretchAcross()
meth public double stretchDown()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String baseSize()
meth public java.lang.String name()
meth public java.util.List<dev.hingepoint.pattern.Opening> openings()
meth public java.util.List<dev.hingepoint.pattern.Seam> seams()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> fronts()
meth public java.util.Optional<dev.hingepoint.pattern.Card$Altered> altered()
meth public java.util.Optional<dev.hingepoint.pattern.Length> cupDifference()
meth public static dev.hingepoint.pattern.Card of(java.lang.String,java.lang.String,java.util.List<dev.hingepoint.pattern.Seam>)
supr java.lang.Record
hfds allowances,altered,baseSize,bodyChart,cupDifference,fronts,lays,name,openings,seams,stretchAcross,stretchDown

CLSS public final static dev.hingepoint.pattern.Card$Altered
 outer dev.hingepoint.pattern.Card
cons public init(java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.List<java.lang.String>,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>,java.util.Optional<dev.hingepoint.pattern.Construction>)
meth public boolean isOf(java.lang.String,java.util.Optional<java.lang.String>)
meth public boolean mayHaveChanged(java.lang.String,java.lang.String)
meth public dev.hingepoint.pattern.Card$Altered withMake(java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.List<java.lang.String>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String size()
meth public java.util.List<dev.hingepoint.pattern.AlterationRequest> alterations()
meth public java.util.List<dev.hingepoint.pattern.AlterationRequest> make()
meth public java.util.List<java.lang.String> steps()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> fits()
meth public java.util.Optional<dev.hingepoint.pattern.Construction> construction()
meth public java.util.Optional<java.lang.String> front()
meth public static dev.hingepoint.pattern.Card$Altered of(java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.pattern.AlterationRequest>,java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>)
meth public static java.lang.String step(java.lang.String,java.lang.String,java.lang.String)
supr java.lang.Record
hfds alterations,construction,fits,front,make,size,steps

CLSS public final dev.hingepoint.pattern.Construction
cons public init(java.util.List<dev.hingepoint.pattern.Seam>,dev.hingepoint.pattern.Allowances,java.util.List<dev.hingepoint.pattern.Opening>,java.util.Map<dev.hingepoint.pattern.EdgeRef,java.lang.String>,java.util.Map<java.lang.String,java.util.List<java.lang.String>>)
fld public final static dev.hingepoint.pattern.Construction NONE
meth public dev.hingepoint.pattern.Allowances allowances()
meth public dev.hingepoint.pattern.Construction withAllowance(dev.hingepoint.pattern.EdgeRef,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.pattern.Construction withFinish(dev.hingepoint.pattern.EdgeRef,java.lang.String)
meth public dev.hingepoint.pattern.Construction withLabel(java.lang.String,java.util.List<java.lang.String>)
meth public dev.hingepoint.pattern.Construction withLabelOn(java.lang.String,java.lang.String,java.lang.String)
meth public dev.hingepoint.pattern.Construction withLabelsOf(java.lang.String,java.lang.String,java.util.function.Predicate<java.lang.String>)
meth public dev.hingepoint.pattern.Construction withOpenings(java.util.List<dev.hingepoint.pattern.Opening>)
meth public dev.hingepoint.pattern.Construction withSeam(dev.hingepoint.pattern.Seam)
meth public dev.hingepoint.pattern.Construction withSeams(java.util.List<dev.hingepoint.pattern.Seam>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.pattern.Opening> openings()
meth public java.util.List<dev.hingepoint.pattern.Seam> seams()
meth public java.util.Map<dev.hingepoint.pattern.EdgeRef,java.lang.String> finishes()
meth public java.util.Map<java.lang.String,java.util.List<java.lang.String>> labels()
supr java.lang.Record
hfds allowances,finishes,labels,openings,seams

CLSS public final dev.hingepoint.pattern.Cutting
cons public init(int,dev.hingepoint.pattern.Cutting$How,java.util.Optional<java.lang.String>)
innr public final static !enum How
meth public boolean isInside()
meth public boolean isMainCloth()
meth public dev.hingepoint.pattern.Cutting$How how()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int count()
meth public int widths()
meth public java.util.Optional<java.lang.String> cloth()
meth public static dev.hingepoint.pattern.Cutting onFold()
meth public static dev.hingepoint.pattern.Cutting once()
meth public static dev.hingepoint.pattern.Cutting pair()
supr java.lang.Record
hfds INSIDE,cloth,count,how

CLSS public final static !enum dev.hingepoint.pattern.Cutting$How
 outer dev.hingepoint.pattern.Cutting
fld public final static dev.hingepoint.pattern.Cutting$How ON_FOLD
fld public final static dev.hingepoint.pattern.Cutting$How PAIR
fld public final static dev.hingepoint.pattern.Cutting$How SINGLE
meth public static dev.hingepoint.pattern.Cutting$How valueOf(java.lang.String)
meth public static dev.hingepoint.pattern.Cutting$How[] values()
supr java.lang.Enum<dev.hingepoint.pattern.Cutting$How>

CLSS public abstract interface dev.hingepoint.pattern.Dart
intf dev.hingepoint.pattern.Mark
meth public abstract java.util.List<dev.hingepoint.curve.Path> legs()
meth public abstract java.util.List<dev.hingepoint.curve.Path> legsFromTip()

CLSS public final dev.hingepoint.pattern.DoublePointedDart
cons public init(java.lang.String,dev.hingepoint.curve.Path,dev.hingepoint.curve.Path)
intf dev.hingepoint.pattern.Dart
meth public dev.hingepoint.curve.Path closed()
meth public dev.hingepoint.curve.Path first()
meth public dev.hingepoint.curve.Path second()
meth public dev.hingepoint.curve.Point firstTip()
meth public dev.hingepoint.curve.Point secondTip()
meth public dev.hingepoint.pattern.DoublePointedDart moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public java.util.List<dev.hingepoint.curve.Path> legs()
meth public java.util.List<dev.hingepoint.curve.Path> legsFromTip()
meth public static dev.hingepoint.pattern.DoublePointedDart of(java.lang.String,dev.hingepoint.curve.Path)
supr java.lang.Record
hfds first,name,second

CLSS public final dev.hingepoint.pattern.Draft
cons public init(dev.hingepoint.pattern.Pattern,java.lang.String,java.util.Optional<java.lang.String>,dev.hingepoint.pattern.Pattern)
meth public !varargs dev.hingepoint.pattern.Draft with(dev.hingepoint.pattern.Piece[])
meth public !varargs java.util.List<dev.hingepoint.pattern.Piece> piecesWithEdges(java.lang.String[])
meth public dev.hingepoint.pattern.Allowances allowances()
meth public dev.hingepoint.pattern.Construction construction()
meth public dev.hingepoint.pattern.Draft with(dev.hingepoint.pattern.Construction)
meth public dev.hingepoint.pattern.Draft with(dev.hingepoint.pattern.Pattern)
meth public dev.hingepoint.pattern.Draft with(java.util.List<dev.hingepoint.pattern.Piece>)
meth public dev.hingepoint.pattern.Draft without(java.util.List<dev.hingepoint.pattern.Piece>)
meth public dev.hingepoint.pattern.Pattern drawn()
meth public dev.hingepoint.pattern.Pattern pattern()
meth public dev.hingepoint.pattern.Piece asDrawn(dev.hingepoint.pattern.Piece,java.lang.String)
meth public dev.hingepoint.pattern.Piece piece(java.lang.String)
meth public double girth(java.lang.String)
meth public double sewnLength(dev.hingepoint.pattern.EdgeRef)
meth public double sewnLength(java.util.List<dev.hingepoint.pattern.EdgeRef>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String size()
meth public java.util.List<dev.hingepoint.pattern.Opening> openings()
meth public java.util.List<dev.hingepoint.pattern.Piece> pieces()
meth public java.util.List<dev.hingepoint.pattern.Seam> seams()
meth public java.util.List<java.lang.String> levels()
meth public java.util.Optional<dev.hingepoint.pattern.Card$Altered> altered()
meth public java.util.Optional<dev.hingepoint.pattern.Piece> find(java.lang.String)
meth public java.util.Optional<java.lang.String> front()
supr java.lang.Record
hfds drawn,front,pattern,size

CLSS public final dev.hingepoint.pattern.DrawnLine
cons public init(java.lang.String,dev.hingepoint.curve.Path)
intf dev.hingepoint.pattern.Mark
meth public dev.hingepoint.curve.Path path()
meth public dev.hingepoint.pattern.DrawnLine moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
supr java.lang.Record
hfds name,path

CLSS public final dev.hingepoint.pattern.Edge
cons public init(java.lang.String,dev.hingepoint.pattern.Edge$Kind,dev.hingepoint.curve.Path)
innr public final static !enum Kind
meth public dev.hingepoint.curve.Path path()
meth public dev.hingepoint.pattern.Edge reversed()
meth public dev.hingepoint.pattern.Edge with(dev.hingepoint.curve.Path)
meth public dev.hingepoint.pattern.Edge$Kind kind()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public static dev.hingepoint.pattern.Edge fold(java.lang.String,dev.hingepoint.curve.Path)
meth public static dev.hingepoint.pattern.Edge hem(java.lang.String,dev.hingepoint.curve.Path)
meth public static dev.hingepoint.pattern.Edge seam(java.lang.String,dev.hingepoint.curve.Path)
supr java.lang.Record
hfds kind,name,path

CLSS public final static !enum dev.hingepoint.pattern.Edge$Kind
 outer dev.hingepoint.pattern.Edge
fld public final static dev.hingepoint.pattern.Edge$Kind BOUND
fld public final static dev.hingepoint.pattern.Edge$Kind FOLD
fld public final static dev.hingepoint.pattern.Edge$Kind HEM
fld public final static dev.hingepoint.pattern.Edge$Kind SEAM
meth public boolean takesAllowance()
meth public static dev.hingepoint.pattern.Edge$Kind valueOf(java.lang.String)
meth public static dev.hingepoint.pattern.Edge$Kind[] values()
supr java.lang.Enum<dev.hingepoint.pattern.Edge$Kind>

CLSS public final dev.hingepoint.pattern.EdgeDart
cons public init(java.lang.String,dev.hingepoint.curve.Path,dev.hingepoint.curve.Path)
intf dev.hingepoint.pattern.Dart
meth public dev.hingepoint.curve.Path first()
meth public dev.hingepoint.curve.Path second()
meth public dev.hingepoint.curve.Point lowerLegEnd(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.curve.Point mouthEnd()
meth public dev.hingepoint.curve.Point mouthMiddle()
meth public dev.hingepoint.curve.Point mouthStart()
meth public dev.hingepoint.curve.Point tip()
meth public dev.hingepoint.curve.Point upperLegEnd(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.pattern.EdgeDart moved(dev.hingepoint.curve.Motion)
meth public double intake()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public java.util.List<dev.hingepoint.curve.Path> legs()
meth public java.util.List<dev.hingepoint.curve.Path> legsFromTip()
meth public static dev.hingepoint.pattern.EdgeDart of(java.lang.String,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point,dev.hingepoint.curve.Point)
supr java.lang.Record
hfds first,name,second

CLSS public final dev.hingepoint.pattern.EdgeRef
cons public init(java.lang.String,java.lang.String)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String edge()
meth public java.lang.String piece()
meth public java.lang.String toString()
meth public static dev.hingepoint.pattern.EdgeRef parse(java.lang.String)
supr java.lang.Record
hfds edge,piece

CLSS public final dev.hingepoint.pattern.Grain
cons public init(dev.hingepoint.curve.Line)
fld public final static java.lang.String SLANTING = "grain"
intf dev.hingepoint.pattern.Mark
meth public dev.hingepoint.curve.Line line()
meth public dev.hingepoint.curve.Vector down()
meth public dev.hingepoint.pattern.Grain moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public static java.util.Optional<dev.hingepoint.curve.Line> slanting(dev.hingepoint.pattern.Piece)
supr java.lang.Record
hfds ACROSS,EDGES,HEM,LEVELS,UPRIGHT,line

CLSS public final dev.hingepoint.pattern.JtsBridge
meth public static dev.hingepoint.pattern.Piece piece(java.lang.String,java.lang.String,java.util.List<dev.hingepoint.pattern.Cutting>,org.locationtech.jts.geom.Polygon,java.util.LinkedHashMap<java.lang.String,java.lang.Integer>)
meth public static java.util.List<dev.hingepoint.curve.Point> points(org.locationtech.jts.geom.LineString)
meth public static org.locationtech.jts.geom.LineString lineString(dev.hingepoint.curve.Path)
meth public static org.locationtech.jts.geom.LineString lineString(dev.hingepoint.pattern.Edge)
meth public static org.locationtech.jts.geom.Polygon polygon(dev.hingepoint.pattern.Piece)
meth public static org.locationtech.jts.geom.Polygon polygon(java.util.List<dev.hingepoint.curve.Point>)
supr java.lang.Object
hfds FACTORY

CLSS public final dev.hingepoint.pattern.Lays
cons public init(java.util.Map<java.lang.String,dev.hingepoint.pattern.Lays$Way>)
fld public final static dev.hingepoint.pattern.Lays ONE_WAY
fld public final static java.lang.String DEFAULT = "default"
innr public final static !enum Way
meth public dev.hingepoint.pattern.Lays$Way of(dev.hingepoint.pattern.Piece)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Lays$Way> byPiece()
supr java.lang.Record
hfds byPiece

CLSS public final static !enum dev.hingepoint.pattern.Lays$Way
 outer dev.hingepoint.pattern.Lays
fld public final static dev.hingepoint.pattern.Lays$Way ANY_WAY
fld public final static dev.hingepoint.pattern.Lays$Way ONE_WAY
fld public final static dev.hingepoint.pattern.Lays$Way TWO_WAYS
meth public java.lang.String words()
meth public static dev.hingepoint.pattern.Lays$Way valueOf(java.lang.String)
meth public static dev.hingepoint.pattern.Lays$Way[] values()
meth public static java.util.Optional<dev.hingepoint.pattern.Lays$Way> named(java.lang.String)
supr java.lang.Enum<dev.hingepoint.pattern.Lays$Way>
hfds words

CLSS public final dev.hingepoint.pattern.Length
cons public init(double)
fld public final static dev.hingepoint.pattern.Length ZERO
intf java.lang.Comparable<dev.hingepoint.pattern.Length>
meth public dev.hingepoint.pattern.Length negated()
meth public dev.hingepoint.pattern.Length tenths()
meth public double in(dev.hingepoint.pattern.Unit)
meth public double mm()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public int compareTo(dev.hingepoint.pattern.Length)
meth public java.lang.String inInches()
meth public java.lang.String shownIn(dev.hingepoint.pattern.Unit)
meth public java.lang.String toString()
meth public static dev.hingepoint.pattern.Length of(double,dev.hingepoint.pattern.Unit)
meth public static dev.hingepoint.pattern.Length ofMillimetres(double)
meth public static dev.hingepoint.pattern.Length parse(java.lang.String,dev.hingepoint.pattern.Unit)
meth public static java.lang.String retold(java.lang.String,dev.hingepoint.pattern.Unit)
supr java.lang.Record
hfds MILLIMETRES,NUMBER,WRITTEN,mm

CLSS public final dev.hingepoint.pattern.Level
cons public init(java.lang.String,dev.hingepoint.curve.Path)
intf dev.hingepoint.pattern.Mark
meth public dev.hingepoint.curve.Path path()
meth public dev.hingepoint.pattern.Level moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
supr java.lang.Record
hfds name,path

CLSS public final dev.hingepoint.pattern.LevelFrame
meth public boolean endsInMouthOf(dev.hingepoint.pattern.EdgeDart)
meth public dev.hingepoint.curve.Line across(java.lang.String,java.lang.String,double)
meth public dev.hingepoint.curve.Path path()
meth public dev.hingepoint.curve.Point origin()
meth public dev.hingepoint.curve.Point outerEnd()
meth public dev.hingepoint.curve.Vector downwards()
meth public dev.hingepoint.curve.Vector outwards()
meth public dev.hingepoint.pattern.Spot endOn(java.lang.String)
meth public double intake()
meth public double intakeOf(dev.hingepoint.pattern.Dart)
meth public double paperWidth()
meth public double width()
meth public java.lang.String name()
meth public java.util.Optional<dev.hingepoint.curve.Position> meets(dev.hingepoint.curve.Path)
supr java.lang.Object
hfds ALONG_GRAIN,name,path,piece

CLSS public abstract interface dev.hingepoint.pattern.Mark
meth public abstract dev.hingepoint.pattern.Mark moved(dev.hingepoint.curve.Motion)
meth public abstract java.lang.String name()

CLSS public final dev.hingepoint.pattern.MarkedPoint
cons public init(java.lang.String,dev.hingepoint.curve.Point,double)
intf dev.hingepoint.pattern.Mark
meth public dev.hingepoint.curve.Point at()
meth public dev.hingepoint.pattern.MarkedPoint moved(dev.hingepoint.curve.Motion)
meth public double radius()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
supr java.lang.Record
hfds at,name,radius

CLSS public final dev.hingepoint.pattern.Names
fld public final static java.lang.String ARMHOLE = "armhole"
fld public final static java.lang.String BUST = "bust"
fld public final static java.lang.String BUST_APEX = "bust apex"
fld public final static java.lang.String CAP = "cap"
fld public final static java.lang.String CENTRE_BACK = "centre back"
fld public final static java.lang.String CENTRE_FRONT = "centre front"
fld public final static java.lang.String HEM = "hem"
fld public final static java.lang.String HIGH_HIP = "high hip"
fld public final static java.lang.String HIP = "hip"
fld public final static java.lang.String NECKLINE = "neckline"
fld public final static java.lang.String SHOULDER = "shoulder"
fld public final static java.lang.String SIDE_SEAM = "side seam"
fld public final static java.lang.String WAIST = "waist"
supr java.lang.Object

CLSS public final dev.hingepoint.pattern.Notch
cons public init(java.lang.String,int,dev.hingepoint.curve.Line)
fld public final static double DEPTH = 6.0
intf dev.hingepoint.pattern.Mark
meth public dev.hingepoint.curve.Line line()
meth public dev.hingepoint.curve.Point at()
meth public dev.hingepoint.pattern.Notch moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int count()
meth public java.lang.String name()
meth public static dev.hingepoint.pattern.Notch on(dev.hingepoint.pattern.Piece,java.lang.String,dev.hingepoint.curve.Position,java.lang.String,int)
supr java.lang.Record
hfds count,line,name

CLSS public final dev.hingepoint.pattern.Opening
cons public init(dev.hingepoint.pattern.EdgeRef,java.lang.String,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.pattern.EdgeRef edge()
meth public dev.hingepoint.pattern.Length length()
meth public dev.hingepoint.pattern.Opening withLength(double)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String from()
supr java.lang.Record
hfds edge,from,length

CLSS public final dev.hingepoint.pattern.Pattern
cons public init(dev.hingepoint.pattern.Card,java.util.List<dev.hingepoint.pattern.Piece>)
fld public final static java.lang.String STANDARD_FRONT = "standard"
meth public boolean hasSize(java.lang.String)
meth public dev.hingepoint.pattern.Card card()
meth public dev.hingepoint.pattern.Draft in(java.lang.String)
meth public dev.hingepoint.pattern.Draft in(java.lang.String,java.util.Optional<java.lang.String>)
meth public dev.hingepoint.pattern.Pattern with(dev.hingepoint.pattern.Card)
meth public dev.hingepoint.pattern.Pattern with(java.util.List<dev.hingepoint.pattern.Piece>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.pattern.Piece> nest()
meth public java.util.List<java.lang.String> sizes()
supr java.lang.Record
hfds card,nest

CLSS public final dev.hingepoint.pattern.Piece
meth public <%0 extends dev.hingepoint.pattern.Mark> java.util.Optional<{%%0}> find(java.lang.Class<{%%0}>,java.lang.String)
meth public <%0 extends dev.hingepoint.pattern.Mark> java.util.stream.Stream<{%%0}> marks(java.lang.Class<{%%0}>)
meth public boolean equals(java.lang.Object)
meth public boolean hasEdge(java.lang.String)
meth public boolean hasLevel(java.lang.String)
meth public boolean holds(dev.hingepoint.curve.Point)
meth public boolean isClockwise()
meth public boolean isSamePieceAs(dev.hingepoint.pattern.Piece)
meth public dev.hingepoint.Where where()
meth public dev.hingepoint.curve.Path downwards(java.lang.String)
meth public dev.hingepoint.curve.Path from(java.lang.String,java.lang.String)
meth public dev.hingepoint.curve.Path outline()
meth public dev.hingepoint.curve.Point point(java.lang.String)
meth public dev.hingepoint.curve.Vector inwards(dev.hingepoint.curve.Vector)
meth public dev.hingepoint.pattern.Edge after(java.lang.String)
meth public dev.hingepoint.pattern.Edge before(java.lang.String)
meth public dev.hingepoint.pattern.Edge below(java.lang.String)
meth public dev.hingepoint.pattern.Edge edge(java.lang.String)
meth public dev.hingepoint.pattern.Grain grain()
meth public dev.hingepoint.pattern.LevelFrame levelFrame(java.lang.String)
meth public dev.hingepoint.pattern.Piece inSize(java.lang.String)
meth public dev.hingepoint.pattern.Piece moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.pattern.Piece named(java.lang.String,java.util.List<dev.hingepoint.pattern.Cutting>)
meth public dev.hingepoint.pattern.Piece with(java.util.List<dev.hingepoint.pattern.Edge>,java.util.List<dev.hingepoint.pattern.Mark>)
meth public dev.hingepoint.pattern.Piece withMark(dev.hingepoint.pattern.Mark)
meth public dev.hingepoint.pattern.Piece withMarks(java.util.List<dev.hingepoint.pattern.Mark>)
meth public dev.hingepoint.pattern.Piece withMarksChanged(java.util.function.UnaryOperator<dev.hingepoint.pattern.Mark>)
meth public dev.hingepoint.pattern.Piece withoutMark(dev.hingepoint.pattern.Mark)
meth public dev.hingepoint.pattern.SewnEdge sewn(java.lang.String)
meth public dev.hingepoint.pattern.Spot nearest(dev.hingepoint.curve.Point)
meth public dev.hingepoint.pattern.Spot nearest(dev.hingepoint.pattern.Edge,dev.hingepoint.curve.Point)
meth public double area()
meth public double sewnLength(java.lang.String)
meth public double width(java.lang.String)
meth public int hashCode()
meth public int widths()
meth public java.lang.String name()
meth public java.lang.String size()
meth public java.lang.String toString()
meth public java.util.List<dev.hingepoint.pattern.Cutting> cuttings()
meth public java.util.List<dev.hingepoint.pattern.Edge> edges()
meth public java.util.List<dev.hingepoint.pattern.Mark> marks()
meth public java.util.Optional<dev.hingepoint.pattern.Edge> centre()
meth public java.util.Optional<java.lang.String> front()
meth public static dev.hingepoint.pattern.Piece of(java.lang.String,java.lang.String,java.util.Optional<java.lang.String>,java.util.List<dev.hingepoint.pattern.Cutting>,java.util.List<dev.hingepoint.pattern.Edge>,java.util.List<dev.hingepoint.pattern.Mark>)
supr java.lang.Object
hfds cuttings,edges,front,grain,marks,name,size

CLSS public abstract interface dev.hingepoint.pattern.Place
innr public final static Along
innr public final static AtLevel
innr public final static Near
meth public abstract dev.hingepoint.pattern.Spot on(dev.hingepoint.pattern.Piece)
meth public static dev.hingepoint.pattern.Place along(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.pattern.Place corner(java.lang.String,java.lang.String)
meth public static dev.hingepoint.pattern.Place fraction(java.lang.String,java.lang.String,double)
meth public static dev.hingepoint.pattern.Place level(java.lang.String,java.lang.String)
meth public static dev.hingepoint.pattern.Place near(java.lang.String,dev.hingepoint.curve.Point)

CLSS public final static dev.hingepoint.pattern.Place$Along
 outer dev.hingepoint.pattern.Place
cons public init(java.lang.String,java.lang.String,double,boolean)
intf dev.hingepoint.pattern.Place
meth public boolean isFraction()
meth public dev.hingepoint.pattern.Spot on(dev.hingepoint.pattern.Piece)
meth public double amount()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
meth public java.lang.String neighbour()
supr java.lang.Record
hfds amount,edge,isFraction,neighbour

CLSS public final static dev.hingepoint.pattern.Place$AtLevel
 outer dev.hingepoint.pattern.Place
cons public init(java.lang.String,java.lang.String)
intf dev.hingepoint.pattern.Place
meth public dev.hingepoint.pattern.Spot on(dev.hingepoint.pattern.Piece)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
meth public java.lang.String level()
supr java.lang.Record
hfds edge,level

CLSS public final static dev.hingepoint.pattern.Place$Near
 outer dev.hingepoint.pattern.Place
cons public init(java.lang.String,dev.hingepoint.curve.Point)
intf dev.hingepoint.pattern.Place
meth public dev.hingepoint.curve.Point point()
meth public dev.hingepoint.pattern.Spot on(dev.hingepoint.pattern.Piece)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String edge()
supr java.lang.Record
hfds edge,point

CLSS public final dev.hingepoint.pattern.Seam
cons public init(java.util.List<dev.hingepoint.pattern.EdgeRef>,java.util.List<dev.hingepoint.pattern.EdgeRef>,double,double,boolean)
meth public boolean joins(dev.hingepoint.pattern.EdgeRef)
meth public boolean reversed()
meth public dev.hingepoint.pattern.Seam withEase(double,double)
meth public double easeFrom()
meth public double easeTo()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String toString()
meth public java.util.List<dev.hingepoint.pattern.EdgeRef> join()
meth public java.util.List<dev.hingepoint.pattern.EdgeRef> to()
meth public static dev.hingepoint.pattern.Seam of(dev.hingepoint.pattern.EdgeRef,dev.hingepoint.pattern.EdgeRef)
meth public static java.lang.String nameOf(java.util.List<dev.hingepoint.pattern.EdgeRef>)
supr java.lang.Record
hfds easeFrom,easeTo,join,reversed,to

CLSS public final dev.hingepoint.pattern.SewnEdge
meth public dev.hingepoint.curve.Path closed()
meth public dev.hingepoint.curve.Position positionAt(double)
meth public double distanceAlong(dev.hingepoint.curve.Position)
meth public double length()
meth public static boolean isOn(dev.hingepoint.curve.Path,dev.hingepoint.pattern.EdgeDart)
supr java.lang.Object
hfds mouths,path
hcls Mouth

CLSS public final dev.hingepoint.pattern.Spot
cons public init(java.lang.String,dev.hingepoint.curve.Position,dev.hingepoint.curve.Point)
intf java.lang.Comparable<dev.hingepoint.pattern.Spot>
meth public dev.hingepoint.curve.Point point()
meth public dev.hingepoint.curve.Position position()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int compareTo(dev.hingepoint.pattern.Spot)
meth public java.lang.String edge()
meth public static dev.hingepoint.pattern.Spot first(dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot)
meth public static dev.hingepoint.pattern.Spot last(dev.hingepoint.pattern.Spot,dev.hingepoint.pattern.Spot)
supr java.lang.Record
hfds edge,point,position

CLSS public final !enum dev.hingepoint.pattern.Unit
fld public final static dev.hingepoint.pattern.Unit CENTIMETRE
fld public final static dev.hingepoint.pattern.Unit INCH
fld public final static dev.hingepoint.pattern.Unit MILLIMETRE
meth public double inMillimetres()
meth public static dev.hingepoint.pattern.Unit parse(java.lang.String)
meth public static dev.hingepoint.pattern.Unit valueOf(java.lang.String)
meth public static dev.hingepoint.pattern.Unit[] values()
supr java.lang.Enum<dev.hingepoint.pattern.Unit>
hfds millimetres

CLSS abstract interface dev.hingepoint.pattern.package-info

CLSS public abstract interface java.io.Serializable

CLSS public abstract interface java.lang.Comparable<%0 extends java.lang.Object>
meth public abstract int compareTo({java.lang.Comparable%0})

CLSS public abstract java.lang.Enum<%0 extends java.lang.Enum<{java.lang.Enum%0}>>
cons protected init(java.lang.String,int)
innr public final static EnumDesc
intf java.io.Serializable
intf java.lang.Comparable<{java.lang.Enum%0}>
intf java.lang.constant.Constable
meth protected final java.lang.Object clone() throws java.lang.CloneNotSupportedException
meth protected final void finalize()
meth public final boolean equals(java.lang.Object)
meth public final int compareTo({java.lang.Enum%0})
meth public final int hashCode()
meth public final int ordinal()
meth public final java.lang.Class<{java.lang.Enum%0}> getDeclaringClass()
meth public final java.lang.String name()
meth public final java.util.Optional<java.lang.Enum$EnumDesc<{java.lang.Enum%0}>> describeConstable()
meth public java.lang.String toString()
meth public static <%0 extends java.lang.Enum<{%%0}>> {%%0} valueOf(java.lang.Class<{%%0}>,java.lang.String)
supr java.lang.Object

CLSS public java.lang.Exception
cons protected init(java.lang.String,java.lang.Throwable,boolean,boolean)
cons public init()
cons public init(java.lang.String)
cons public init(java.lang.String,java.lang.Throwable)
cons public init(java.lang.Throwable)
supr java.lang.Throwable

CLSS public abstract interface !annotation java.lang.FunctionalInterface
 anno 0 java.lang.annotation.Documented()
 anno 0 java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy value=RUNTIME)
 anno 0 java.lang.annotation.Target(java.lang.annotation.ElementType[] value=[TYPE])
intf java.lang.annotation.Annotation

CLSS public java.lang.Object
cons public init()
meth protected java.lang.Object clone() throws java.lang.CloneNotSupportedException
meth protected void finalize() throws java.lang.Throwable
 anno 0 java.lang.Deprecated(boolean forRemoval=false, java.lang.String since="9")
meth public boolean equals(java.lang.Object)
meth public final java.lang.Class<?> getClass()
meth public final void notify()
meth public final void notifyAll()
meth public final void wait() throws java.lang.InterruptedException
meth public final void wait(long) throws java.lang.InterruptedException
meth public final void wait(long,int) throws java.lang.InterruptedException
meth public int hashCode()
meth public java.lang.String toString()

CLSS public abstract java.lang.Record
cons protected init()
meth public abstract boolean equals(java.lang.Object)
meth public abstract int hashCode()
meth public abstract java.lang.String toString()
supr java.lang.Object

CLSS public java.lang.RuntimeException
cons protected init(java.lang.String,java.lang.Throwable,boolean,boolean)
cons public init()
cons public init(java.lang.String)
cons public init(java.lang.String,java.lang.Throwable)
cons public init(java.lang.Throwable)
supr java.lang.Exception

CLSS public java.lang.Throwable
cons protected init(java.lang.String,java.lang.Throwable,boolean,boolean)
cons public init()
cons public init(java.lang.String)
cons public init(java.lang.String,java.lang.Throwable)
cons public init(java.lang.Throwable)
intf java.io.Serializable
meth public final java.lang.Throwable[] getSuppressed()
meth public final void addSuppressed(java.lang.Throwable)
meth public java.lang.StackTraceElement[] getStackTrace()
meth public java.lang.String getLocalizedMessage()
meth public java.lang.String getMessage()
meth public java.lang.String toString()
meth public java.lang.Throwable fillInStackTrace()
meth public java.lang.Throwable getCause()
meth public java.lang.Throwable initCause(java.lang.Throwable)
meth public void printStackTrace()
meth public void printStackTrace(java.io.PrintStream)
meth public void printStackTrace(java.io.PrintWriter)
meth public void setStackTrace(java.lang.StackTraceElement[])
supr java.lang.Object

CLSS public abstract interface java.lang.annotation.Annotation
meth public abstract boolean equals(java.lang.Object)
meth public abstract int hashCode()
meth public abstract java.lang.Class<? extends java.lang.annotation.Annotation> annotationType()
meth public abstract java.lang.String toString()

CLSS public abstract interface !annotation java.lang.annotation.Documented
 anno 0 java.lang.annotation.Documented()
 anno 0 java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy value=RUNTIME)
 anno 0 java.lang.annotation.Target(java.lang.annotation.ElementType[] value=[ANNOTATION_TYPE])
intf java.lang.annotation.Annotation

CLSS public abstract interface !annotation java.lang.annotation.Retention
 anno 0 java.lang.annotation.Documented()
 anno 0 java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy value=RUNTIME)
 anno 0 java.lang.annotation.Target(java.lang.annotation.ElementType[] value=[ANNOTATION_TYPE])
intf java.lang.annotation.Annotation
meth public abstract java.lang.annotation.RetentionPolicy value()

CLSS public abstract interface !annotation java.lang.annotation.Target
 anno 0 java.lang.annotation.Documented()
 anno 0 java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy value=RUNTIME)
 anno 0 java.lang.annotation.Target(java.lang.annotation.ElementType[] value=[ANNOTATION_TYPE])
intf java.lang.annotation.Annotation
meth public abstract java.lang.annotation.ElementType[] value()

CLSS public abstract interface java.lang.constant.Constable
meth public abstract java.util.Optional<? extends java.lang.constant.ConstantDesc> describeConstable()

