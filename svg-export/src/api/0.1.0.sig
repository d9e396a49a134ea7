#Signature file v4.1
#Version 0.1.0-SNAPSHOT

CLSS public final dev.hingepoint.svg.figure.FigurePicture
cons public init(java.lang.String,dev.hingepoint.svg.page.Drawn)
fld public final static double HEIGHT = 110.0
fld public final static double WIDTH = 50.0
meth public dev.hingepoint.svg.page.Drawn drawn()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String describes()
supr java.lang.Record
hfds describes,drawn

CLSS public final dev.hingepoint.svg.figure.FigurePictures
cons public init(dev.hingepoint.svg.figure.FigurePicture,dev.hingepoint.svg.figure.FigurePicture,dev.hingepoint.svg.figure.FigurePicture)
meth public dev.hingepoint.svg.figure.FigurePicture right()
meth public dev.hingepoint.svg.figure.FigurePicture without()
meth public dev.hingepoint.svg.figure.FigurePicture wrong()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public static java.util.Optional<dev.hingepoint.svg.figure.FigurePictures> of(java.lang.String)
supr java.lang.Record
hfds right,without,wrong

CLSS abstract interface dev.hingepoint.svg.figure.package-info

CLSS public final dev.hingepoint.svg.file.BodyReader
innr public final static ReadBody
meth public static dev.hingepoint.fit.Body read(java.nio.file.Path)
meth public static dev.hingepoint.svg.file.BodyReader$ReadBody readWithNotes(java.lang.String,java.lang.String)
meth public static dev.hingepoint.svg.file.BodyReader$ReadBody readWithNotes(java.nio.file.Path)
supr java.lang.Object
hfds OTHER

CLSS public final static dev.hingepoint.svg.file.BodyReader$ReadBody
 outer dev.hingepoint.svg.file.BodyReader
cons public init(dev.hingepoint.fit.Body,dev.hingepoint.pattern.Unit,java.util.List<java.lang.String>)
meth public dev.hingepoint.fit.Body body()
meth public dev.hingepoint.pattern.Unit unit()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.lang.String> unused()
supr java.lang.Record
hfds body,unit,unused

CLSS public final dev.hingepoint.svg.file.CuttingText
meth public static java.lang.String write(dev.hingepoint.pattern.Cutting)
meth public static java.lang.String write(java.util.List<dev.hingepoint.pattern.Cutting>)
meth public static java.util.List<dev.hingepoint.pattern.Cutting> parse(java.lang.String)
supr java.lang.Object
hfds ONE

CLSS public final dev.hingepoint.svg.file.DrawingWriter
meth public static java.lang.String write(dev.hingepoint.pattern.Pattern)
supr java.lang.Object
hfds MARGIN,ids,svg

CLSS public final dev.hingepoint.svg.file.LedgerJson
meth public static java.lang.String text(java.lang.String)
meth public static java.lang.String write(dev.hingepoint.check.Ledger)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.file.MeasurementsJson
meth public static java.lang.String write(java.lang.String,java.util.Map<java.lang.String,dev.hingepoint.pattern.Draft>,java.util.Map<java.lang.String,java.util.List<dev.hingepoint.fit.Ease>>,java.util.Map<java.lang.String,java.util.List<dev.hingepoint.fit.GettingIn$Narrow>>)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.file.Numbers
meth public static java.lang.String of(double)
meth public static java.lang.String of(double,int)
supr java.lang.Object
hfds DECIMALS

CLSS public final dev.hingepoint.svg.file.OrderReader
innr public final static ReadOrder
meth public static dev.hingepoint.svg.file.OrderReader$ReadOrder read(java.nio.file.Path)
supr java.lang.Object

CLSS public final static dev.hingepoint.svg.file.OrderReader$ReadOrder
 outer dev.hingepoint.svg.file.OrderReader
cons public init(java.nio.file.Path,dev.hingepoint.alter.Order,java.util.List<dev.hingepoint.pattern.AlterationRequest>)
meth public dev.hingepoint.alter.Order order()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.nio.file.Path card()
meth public java.util.List<dev.hingepoint.pattern.AlterationRequest> make()
supr java.lang.Record
hfds card,make,order

CLSS public final dev.hingepoint.svg.file.OrderWriter
meth public static java.lang.String write(dev.hingepoint.fit.Plan,java.lang.String,dev.hingepoint.pattern.Unit)
meth public static java.util.List<java.lang.String> lines(java.lang.String,int)
meth public static java.util.List<java.lang.String> reasons(dev.hingepoint.fit.PlanLine,dev.hingepoint.pattern.Unit)
supr java.lang.Object
hfds WIDE

CLSS public final dev.hingepoint.svg.file.PatternFiles
innr public final static LoadedPattern
meth public static dev.hingepoint.pattern.Pattern read(java.nio.file.Path)
meth public static dev.hingepoint.svg.file.PatternFiles$LoadedPattern readWithNotes(java.nio.file.Path)
meth public static java.util.Map<java.lang.String,java.lang.String> contents(dev.hingepoint.pattern.Pattern,java.lang.String)
meth public static void write(dev.hingepoint.pattern.Pattern,java.nio.file.Path,java.lang.String)
supr java.lang.Object

CLSS public final static dev.hingepoint.svg.file.PatternFiles$LoadedPattern
 outer dev.hingepoint.svg.file.PatternFiles
cons public init(dev.hingepoint.pattern.Pattern,java.util.List<java.lang.String>)
meth public dev.hingepoint.pattern.Pattern pattern()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.lang.String> notes()
supr java.lang.Record
hfds notes,pattern

CLSS public final dev.hingepoint.svg.file.Shipped
meth public static dev.hingepoint.svg.file.Yaml yaml(java.lang.Class<?>,java.lang.String)
meth public static java.lang.String text(java.lang.Class<?>,java.lang.String)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.file.Sides
cons public init(dev.hingepoint.pattern.Length,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.pattern.Length height()
meth public dev.hingepoint.pattern.Length width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public static java.util.Optional<dev.hingepoint.svg.file.Sides> parse(java.lang.String)
supr java.lang.Record
hfds WRITTEN,height,width

CLSS public final dev.hingepoint.svg.file.WholeFiles
meth public static java.util.Map<java.lang.String,byte[]> encoded(java.util.Map<java.lang.String,java.lang.String>)
meth public static void deleteOthers(java.nio.file.Path,java.lang.String,java.lang.String,java.util.Set<java.lang.String>)
meth public static void writeAll(java.nio.file.Path,java.util.Map<java.lang.String,java.lang.String>)
meth public static void writeBytes(java.nio.file.Path,java.util.Map<java.lang.String,byte[]>)
supr java.lang.Object
hfds MOST_BYTES

CLSS public final dev.hingepoint.svg.file.Xml
meth public static java.lang.String escaped(java.lang.String)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.file.Yaml
meth public !varargs void knowing(java.lang.String[])
meth public java.lang.String requiredText(java.lang.String,java.lang.String)
meth public java.util.List<dev.hingepoint.svg.file.Yaml> maps(java.lang.String)
meth public java.util.List<java.lang.Object> list(java.lang.String)
meth public java.util.List<java.lang.String> keys()
meth public java.util.Optional<dev.hingepoint.svg.file.Yaml> map(java.lang.String)
meth public java.util.Optional<java.lang.String> text(java.lang.String)
meth public static dev.hingepoint.svg.file.Yaml parse(java.lang.String,java.lang.String)
supr java.lang.Object
hfds MOST_ALIASES,MOST_CHARACTERS,file,map,path

CLSS abstract interface dev.hingepoint.svg.file.package-info

CLSS public final dev.hingepoint.svg.lay.Laid
cons public init(java.util.List<dev.hingepoint.curve.Motion>,double,double)
meth public double height()
meth public double width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Motion> places()
supr java.lang.Record
hfds height,places,width

CLSS public final dev.hingepoint.svg.lay.Pages
cons public init(double,double,double)
meth public double height()
meth public double overlap()
meth public double stepAcross()
meth public double stepDown()
meth public double width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int needed(java.util.List<dev.hingepoint.svg.lay.Shape>,dev.hingepoint.svg.lay.Laid)
supr java.lang.Record
hfds height,overlap,width

CLSS public final dev.hingepoint.svg.lay.Shape
cons public init(java.util.List<java.util.List<dev.hingepoint.curve.Point>>,dev.hingepoint.pattern.Lays$Way)
meth public dev.hingepoint.pattern.Lays$Way way()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<java.util.List<dev.hingepoint.curve.Point>> grounds()
supr java.lang.Record
hfds grounds,way

CLSS public final dev.hingepoint.svg.lay.SheetLayout
meth public static dev.hingepoint.svg.lay.Laid laid(java.util.List<dev.hingepoint.svg.lay.Shape>,dev.hingepoint.svg.lay.Pages,double)
meth public static double widest(dev.hingepoint.svg.lay.Pages,double)
supr java.lang.Object
hfds BEGINNINGS,IMPROVING,MOST_COLUMNS,WIDEST,grid,search,shapes,ways

CLSS public final dev.hingepoint.svg.lay.StripLayout
meth public static dev.hingepoint.svg.lay.Laid laid(java.util.List<dev.hingepoint.svg.lay.Shape>,double,double)
meth public static double narrowest(java.util.List<dev.hingepoint.svg.lay.Shape>,double)
supr java.lang.Object
hfds apart,beyond,effort,shapes,square,width
hcls Item,Place

CLSS abstract interface dev.hingepoint.svg.lay.package-info

CLSS public final dev.hingepoint.svg.lesson.Carry
cons public init(dev.hingepoint.curve.Box,dev.hingepoint.curve.Box,java.util.List<dev.hingepoint.svg.lesson.Carry$Frame>,java.util.Map<java.lang.String,dev.hingepoint.curve.Motion>)
innr public final static Frame
innr public final static Line
meth public dev.hingepoint.curve.Box box()
meth public dev.hingepoint.curve.Box moves()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.svg.lesson.Carry$Frame> frames()
meth public java.util.Map<java.lang.String,dev.hingepoint.curve.Motion> places()
supr java.lang.Record
hfds UNITS,box,frames,moves,places

CLSS public final static dev.hingepoint.svg.lesson.Carry$Frame
 outer dev.hingepoint.svg.lesson.Carry
cons public init(double,java.lang.String,java.util.List<dev.hingepoint.svg.lesson.Carry$Line>)
meth public double fraction()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String told()
meth public java.util.List<dev.hingepoint.svg.lesson.Carry$Line> lines()
supr java.lang.Record
hfds fraction,lines,told

CLSS public final static dev.hingepoint.svg.lesson.Carry$Line
 outer dev.hingepoint.svg.lesson.Carry
cons public init(dev.hingepoint.svg.page.Layer,dev.hingepoint.svg.page.Style,java.lang.String)
meth public dev.hingepoint.svg.page.Layer layer()
meth public dev.hingepoint.svg.page.Style style()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String data()
supr java.lang.Record
hfds data,layer,style

CLSS public final dev.hingepoint.svg.lesson.Lesson
cons public init(java.lang.String,java.lang.String,dev.hingepoint.pattern.Unit,dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft,java.util.List<dev.hingepoint.move.Step>,java.util.List<dev.hingepoint.svg.lesson.Scene>,dev.hingepoint.svg.lesson.Carry,dev.hingepoint.check.Ledger$Entry,java.util.List<java.lang.String>,java.util.List<java.lang.String>,java.util.Optional<dev.hingepoint.svg.lesson.Why>)
meth public dev.hingepoint.check.Ledger$Entry changed()
meth public dev.hingepoint.pattern.Draft after()
meth public dev.hingepoint.pattern.Draft before()
meth public dev.hingepoint.pattern.Unit unit()
meth public dev.hingepoint.svg.lesson.Carry carry()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String alteration()
meth public java.lang.String order()
meth public java.lang.String pattern()
meth public java.lang.String title()
meth public java.util.List<dev.hingepoint.move.Step> steps()
meth public java.util.List<dev.hingepoint.svg.lesson.Scene> scenes()
meth public java.util.List<java.lang.String> kept()
meth public java.util.List<java.lang.String> worse()
meth public java.util.Optional<dev.hingepoint.svg.lesson.Why> why()
meth public static dev.hingepoint.svg.lesson.Lesson of(dev.hingepoint.pattern.Draft,dev.hingepoint.alter.Alteration,dev.hingepoint.alter.Options,dev.hingepoint.pattern.Unit)
meth public static java.util.List<dev.hingepoint.svg.lesson.Lesson> of(dev.hingepoint.pattern.Pattern,dev.hingepoint.alter.Order,dev.hingepoint.pattern.Unit)
meth public static java.util.List<dev.hingepoint.svg.lesson.Lesson> of(dev.hingepoint.pattern.Pattern,dev.hingepoint.alter.Order,java.util.List<dev.hingepoint.alter.Alteration>,dev.hingepoint.pattern.Unit)
supr java.lang.Record
hfds after,alteration,before,carry,changed,kept,order,scenes,steps,unit,why,worse

CLSS public final dev.hingepoint.svg.lesson.Lessons
innr public final static Form
meth public static int writeAll(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Unit,dev.hingepoint.svg.lesson.Lessons$Form,java.nio.file.Path)
meth public static java.util.Map<java.lang.String,byte[]> all(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Unit,dev.hingepoint.svg.lesson.Lessons$Form)
meth public static java.util.Map<java.lang.String,byte[]> files(java.util.List<dev.hingepoint.svg.lesson.Lesson>,dev.hingepoint.svg.lesson.Lessons$Form)
meth public static void write(java.util.List<dev.hingepoint.svg.lesson.Lesson>,dev.hingepoint.svg.lesson.Lessons$Form,java.nio.file.Path)
supr java.lang.Object

CLSS public final static dev.hingepoint.svg.lesson.Lessons$Form
 outer dev.hingepoint.svg.lesson.Lessons
cons public init(dev.hingepoint.svg.page.Paper,dev.hingepoint.svg.print.Scale)
fld public final static dev.hingepoint.svg.lesson.Lessons$Form USUAL
meth public dev.hingepoint.svg.page.Paper paper()
meth public dev.hingepoint.svg.print.Scale scale()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
supr java.lang.Record
hfds HEIGHT,WIDTH,paper,scale

CLSS public final dev.hingepoint.svg.lesson.Scene
cons public init(dev.hingepoint.svg.lesson.Scene$Kind,java.lang.String,java.lang.String,double,dev.hingepoint.svg.page.Drawn,dev.hingepoint.curve.Box)
innr public final static !enum Kind
meth public dev.hingepoint.curve.Box box()
meth public dev.hingepoint.svg.lesson.Scene$Kind kind()
meth public dev.hingepoint.svg.page.Drawn drawn()
meth public double scale()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String caption()
meth public java.lang.String piece()
meth public java.lang.String scaleWords()
supr java.lang.Record
hfds box,caption,drawn,kind,piece,scale

CLSS public final static !enum dev.hingepoint.svg.lesson.Scene$Kind
 outer dev.hingepoint.svg.lesson.Scene
fld public final static dev.hingepoint.svg.lesson.Scene$Kind AS_IT_WAS
fld public final static dev.hingepoint.svg.lesson.Scene$Kind COMPARED
fld public final static dev.hingepoint.svg.lesson.Scene$Kind LINES
fld public final static dev.hingepoint.svg.lesson.Scene$Kind MOVED
fld public final static dev.hingepoint.svg.lesson.Scene$Kind REJOINED
fld public final static dev.hingepoint.svg.lesson.Scene$Kind SLASHED
fld public final static dev.hingepoint.svg.lesson.Scene$Kind TRUED
meth public java.lang.String words()
meth public static dev.hingepoint.svg.lesson.Scene$Kind valueOf(java.lang.String)
meth public static dev.hingepoint.svg.lesson.Scene$Kind[] values()
supr java.lang.Enum<dev.hingepoint.svg.lesson.Scene$Kind>
hfds words

CLSS public final dev.hingepoint.svg.lesson.Why
cons public init(java.lang.String,java.lang.String,dev.hingepoint.svg.figure.FigurePicture,java.util.List<dev.hingepoint.svg.lesson.Why$Confusion>,dev.hingepoint.svg.lesson.Why$Cure,dev.hingepoint.svg.lesson.Why$Cure,java.util.List<dev.hingepoint.svg.lesson.Why$Source>)
innr public final static Confusion
innr public final static Cure
innr public final static Source
meth public dev.hingepoint.svg.figure.FigurePicture without()
meth public dev.hingepoint.svg.lesson.Why$Cure right()
meth public dev.hingepoint.svg.lesson.Why$Cure wrong()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String calledForBy()
meth public java.lang.String withoutIt()
meth public java.util.List<dev.hingepoint.svg.lesson.Why$Confusion> confusedWith()
meth public java.util.List<dev.hingepoint.svg.lesson.Why$Source> sources()
meth public static java.util.Optional<dev.hingepoint.svg.lesson.Why> of(java.lang.String)
supr java.lang.Record
hfds calledForBy,confusedWith,right,sources,without,withoutIt,wrong

CLSS public final static dev.hingepoint.svg.lesson.Why$Confusion
 outer dev.hingepoint.svg.lesson.Why
cons public init(java.lang.String,java.lang.String)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String cause()
meth public java.lang.String tell()
supr java.lang.Record
hfds cause,tell

CLSS public final static dev.hingepoint.svg.lesson.Why$Cure
 outer dev.hingepoint.svg.lesson.Why
cons public init(java.lang.String,java.lang.String,dev.hingepoint.svg.figure.FigurePicture)
meth public dev.hingepoint.svg.figure.FigurePicture picture()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String does()
meth public java.lang.String name()
supr java.lang.Record
hfds does,name,picture

CLSS public final static dev.hingepoint.svg.lesson.Why$Source
 outer dev.hingepoint.svg.lesson.Why
cons public init(java.lang.String,java.lang.String,java.lang.String)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String grade()
meth public java.lang.String name()
meth public java.lang.String says()
supr java.lang.Record
hfds grade,name,says

CLSS abstract interface dev.hingepoint.svg.lesson.package-info

CLSS public final dev.hingepoint.svg.page.Area
cons public init(dev.hingepoint.svg.page.Tint,java.util.List<dev.hingepoint.curve.Point>)
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.svg.page.Area moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.svg.page.Tint tint()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> ring()
supr java.lang.Record
hfds ring,tint

CLSS public final dev.hingepoint.svg.page.Clipping
meth public static java.util.List<dev.hingepoint.svg.page.Stroke> clipped(dev.hingepoint.svg.page.Stroke,dev.hingepoint.curve.Box)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.page.Drawn
cons public init(java.util.List<dev.hingepoint.svg.page.Area>,java.util.List<dev.hingepoint.svg.page.Stroke>,java.util.List<dev.hingepoint.svg.page.Text>)
cons public init(java.util.List<dev.hingepoint.svg.page.Stroke>,java.util.List<dev.hingepoint.svg.page.Text>)
fld public final static dev.hingepoint.svg.page.Drawn NOTHING
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.svg.page.Drawn and(dev.hingepoint.svg.page.Drawn)
meth public dev.hingepoint.svg.page.Drawn moved(dev.hingepoint.curve.Motion)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.svg.page.Area> areas()
meth public java.util.List<dev.hingepoint.svg.page.Stroke> strokes()
meth public java.util.List<dev.hingepoint.svg.page.Text> texts()
meth public static dev.hingepoint.svg.page.Drawn of(java.util.List<dev.hingepoint.svg.page.Drawn>)
supr java.lang.Record
hfds areas,strokes,texts

CLSS public final !enum dev.hingepoint.svg.page.Layer
fld public final static dev.hingepoint.svg.page.Layer CUTTING
fld public final static dev.hingepoint.svg.page.Layer FIGURE
fld public final static dev.hingepoint.svg.page.Layer GRID
fld public final static dev.hingepoint.svg.page.Layer LABELS
fld public final static dev.hingepoint.svg.page.Layer MARKS
fld public final static dev.hingepoint.svg.page.Layer ORIGINAL
fld public final static dev.hingepoint.svg.page.Layer PAGE
fld public final static dev.hingepoint.svg.page.Layer PARTS
fld public final static dev.hingepoint.svg.page.Layer STEP
fld public final static dev.hingepoint.svg.page.Layer STITCHING
meth public java.lang.String id()
meth public java.lang.String words()
meth public static dev.hingepoint.svg.page.Layer valueOf(java.lang.String)
meth public static dev.hingepoint.svg.page.Layer[] values()
supr java.lang.Enum<dev.hingepoint.svg.page.Layer>
hfds words

CLSS public final dev.hingepoint.svg.page.Page
cons public init(int,int,dev.hingepoint.svg.page.Paper,double,double,dev.hingepoint.svg.page.Drawn,dev.hingepoint.svg.page.Drawn)
meth public dev.hingepoint.curve.Box printable()
meth public dev.hingepoint.svg.page.Drawn drawn()
meth public dev.hingepoint.svg.page.Drawn frame()
meth public dev.hingepoint.svg.page.Paper paper()
meth public double margin()
meth public double weight()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int column()
meth public int row()
meth public java.lang.String name()
meth public java.util.Map<dev.hingepoint.svg.page.Layer,dev.hingepoint.svg.page.Drawn> layers()
supr java.lang.Record
hfds column,drawn,frame,margin,paper,row,weight

CLSS public final dev.hingepoint.svg.page.Paper
cons public init(java.lang.String,double,double,dev.hingepoint.svg.page.Paper$Kind)
fld public final static dev.hingepoint.svg.page.Paper A3
fld public final static dev.hingepoint.svg.page.Paper A4
fld public final static dev.hingepoint.svg.page.Paper LETTER
innr public final static !enum Kind
meth public dev.hingepoint.svg.page.Paper cutTo(double,double)
meth public dev.hingepoint.svg.page.Paper turned()
meth public dev.hingepoint.svg.page.Paper$Kind kind()
meth public double height()
meth public double width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String name()
meth public static dev.hingepoint.svg.page.Paper named(java.lang.String)
supr java.lang.Record
hfds INCH,KNOWN,LONGEST,ROLL,SMALLEST,height,kind,name,width

CLSS public final static !enum dev.hingepoint.svg.page.Paper$Kind
 outer dev.hingepoint.svg.page.Paper
fld public final static dev.hingepoint.svg.page.Paper$Kind PROJECTION
fld public final static dev.hingepoint.svg.page.Paper$Kind ROLL
fld public final static dev.hingepoint.svg.page.Paper$Kind SHEET
meth public static dev.hingepoint.svg.page.Paper$Kind valueOf(java.lang.String)
meth public static dev.hingepoint.svg.page.Paper$Kind[] values()
supr java.lang.Enum<dev.hingepoint.svg.page.Paper$Kind>

CLSS public final dev.hingepoint.svg.page.PdfPages
meth public static byte[] write(java.util.List<dev.hingepoint.svg.page.Page>,java.lang.String)
supr java.lang.Object

CLSS public final dev.hingepoint.svg.page.Stroke
cons public init(dev.hingepoint.svg.page.Style,java.util.List<dev.hingepoint.curve.Point>)
cons public init(dev.hingepoint.svg.page.Style,java.util.List<dev.hingepoint.curve.Point>,double)
meth public !varargs static dev.hingepoint.svg.page.Stroke of(dev.hingepoint.svg.page.Style,dev.hingepoint.curve.Point[])
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.svg.page.Stroke moved(dev.hingepoint.curve.Motion)
meth public dev.hingepoint.svg.page.Style style()
meth public double before()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.List<dev.hingepoint.curve.Point> points()
supr java.lang.Record
hfds before,points,style

CLSS public final !enum dev.hingepoint.svg.page.Style
fld public final static dev.hingepoint.svg.page.Style AFTER
fld public final static dev.hingepoint.svg.page.Style BEFORE
fld public final static dev.hingepoint.svg.page.Style CENTRE
fld public final static dev.hingepoint.svg.page.Style CUTTING
fld public final static dev.hingepoint.svg.page.Style DART
fld public final static dev.hingepoint.svg.page.Style DRAWN
fld public final static dev.hingepoint.svg.page.Style FIGURE
fld public final static dev.hingepoint.svg.page.Style FOLD
fld public final static dev.hingepoint.svg.page.Style GLUE
fld public final static dev.hingepoint.svg.page.Style GRID
fld public final static dev.hingepoint.svg.page.Style GRID_WIDE
fld public final static dev.hingepoint.svg.page.Style HINGE
fld public final static dev.hingepoint.svg.page.Style JOIN
fld public final static dev.hingepoint.svg.page.Style LEADER
fld public final static dev.hingepoint.svg.page.Style LEFT
fld public final static dev.hingepoint.svg.page.Style LEVEL
fld public final static dev.hingepoint.svg.page.Style MARK
fld public final static dev.hingepoint.svg.page.Style NEST_1
fld public final static dev.hingepoint.svg.page.Style NEST_10
fld public final static dev.hingepoint.svg.page.Style NEST_2
fld public final static dev.hingepoint.svg.page.Style NEST_3
fld public final static dev.hingepoint.svg.page.Style NEST_4
fld public final static dev.hingepoint.svg.page.Style NEST_5
fld public final static dev.hingepoint.svg.page.Style NEST_6
fld public final static dev.hingepoint.svg.page.Style NEST_7
fld public final static dev.hingepoint.svg.page.Style NEST_8
fld public final static dev.hingepoint.svg.page.Style NEST_9
fld public final static dev.hingepoint.svg.page.Style NOW
fld public final static dev.hingepoint.svg.page.Style ON_FOLD
fld public final static dev.hingepoint.svg.page.Style RULE
fld public final static dev.hingepoint.svg.page.Style SEAM
fld public final static dev.hingepoint.svg.page.Style SLASH
fld public final static dev.hingepoint.svg.page.Style SQUARE
fld public final static dev.hingepoint.svg.page.Style STITCHING
fld public final static dev.hingepoint.svg.page.Style TRIM
fld public final static dev.hingepoint.svg.page.Style WAY
fld public final static dev.hingepoint.svg.page.Style WRINKLE
meth public dev.hingepoint.svg.page.Layer layer()
meth public double dashLength()
meth public double width()
meth public java.util.List<java.lang.Double> dashes()
meth public static dev.hingepoint.svg.page.Style valueOf(java.lang.String)
meth public static dev.hingepoint.svg.page.Style[] values()
meth public static java.util.List<dev.hingepoint.svg.page.Style> nest()
supr java.lang.Enum<dev.hingepoint.svg.page.Style>
hfds NEST,dashes,layer,width

CLSS public final dev.hingepoint.svg.page.SvgPage
meth public static java.lang.String inline(dev.hingepoint.svg.page.Drawn,dev.hingepoint.curve.Box,java.lang.String)
meth public static java.lang.String opening(dev.hingepoint.curve.Box,java.lang.String)
meth public static java.lang.String text(dev.hingepoint.svg.page.Text)
meth public static java.lang.String write(dev.hingepoint.svg.page.Page)
meth public static java.lang.String write(double,double,dev.hingepoint.svg.page.Drawn,java.lang.String)
supr java.lang.Object
hfds DECIMALS,INLINE_DECIMALS

CLSS public final dev.hingepoint.svg.page.Text
cons public init(java.lang.String,dev.hingepoint.curve.Point,double,double)
fld public final static double ABOVE = 0.75
fld public final static double BELOW = 0.22
meth public dev.hingepoint.curve.Box bounds()
meth public dev.hingepoint.curve.Point at()
meth public dev.hingepoint.svg.page.Text moved(dev.hingepoint.curve.Motion)
meth public double angle()
meth public double size()
meth public double width()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String words()
meth public java.util.List<dev.hingepoint.curve.Point> corners()
supr java.lang.Record
hfds angle,at,size,words

CLSS public final !enum dev.hingepoint.svg.page.Tint
fld public final static dev.hingepoint.svg.page.Tint CHANGED
fld public final static dev.hingepoint.svg.page.Tint FIRST
fld public final static dev.hingepoint.svg.page.Tint FOURTH
fld public final static dev.hingepoint.svg.page.Tint SECOND
fld public final static dev.hingepoint.svg.page.Tint STAYS
fld public final static dev.hingepoint.svg.page.Tint THIRD
meth public int[] colour()
meth public static dev.hingepoint.svg.page.Tint ofPart(int)
meth public static dev.hingepoint.svg.page.Tint valueOf(java.lang.String)
meth public static dev.hingepoint.svg.page.Tint[] values()
supr java.lang.Enum<dev.hingepoint.svg.page.Tint>
hfds PARTS,blue,green,red

CLSS public final dev.hingepoint.svg.page.Type
meth public static double width(java.lang.String,double)
meth public static int glyph(int)
meth public static java.util.List<java.lang.String> wrapped(java.lang.String,double,double,double)
supr java.lang.Object
hfds CMAP,FONT,HMTX,UNITS_PER_EM,WIDTHS

CLSS abstract interface dev.hingepoint.svg.page.package-info

CLSS public final dev.hingepoint.svg.print.BeforeAfter
meth public static java.lang.String svg(dev.hingepoint.pattern.Draft,dev.hingepoint.pattern.Draft)
supr java.lang.Object
hfds BETWEEN,HEADING,MARGIN,TYPE

CLSS public final dev.hingepoint.svg.print.Calibration
cons public init(double,double)
fld public final static dev.hingepoint.svg.print.Calibration TRUE
fld public final static double SIDE = 100.0
meth public double across()
meth public double down()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public java.lang.String toString()
meth public static dev.hingepoint.svg.print.Calibration parse(java.lang.String)
supr java.lang.Record
hfds MOST,across,down

CLSS public final dev.hingepoint.svg.print.ClothLayout
meth public dev.hingepoint.svg.page.Drawn picture(double,double)
meth public double needed()
meth public double used()
meth public double waste()
meth public double width()
meth public java.lang.String cloth()
meth public java.lang.String sentence()
meth public java.lang.String svg(double,double,double)
meth public static java.util.List<dev.hingepoint.svg.print.ClothLayout> of(dev.hingepoint.pattern.Draft,dev.hingepoint.svg.print.ClothWidths)
supr java.lang.Object
hfds APART,BOUGHT_BY,cloth,draft,pieces,used,width

CLSS public final dev.hingepoint.svg.print.ClothWidths
cons public init(java.util.Map<java.lang.String,dev.hingepoint.pattern.Length>,dev.hingepoint.svg.print.ClothWidths$Nap)
fld public final static dev.hingepoint.svg.print.ClothWidths USUAL
fld public final static java.lang.String INTERFACING = "interfacing"
fld public final static java.lang.String MAIN = "main"
innr public final static !enum Nap
meth public dev.hingepoint.pattern.Length of(java.lang.String)
meth public dev.hingepoint.svg.print.ClothWidths with(dev.hingepoint.svg.print.ClothWidths$Nap)
meth public dev.hingepoint.svg.print.ClothWidths with(java.lang.String,dev.hingepoint.pattern.Length)
meth public dev.hingepoint.svg.print.ClothWidths$Nap nap()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.util.Map<java.lang.String,dev.hingepoint.pattern.Length> byCloth()
supr java.lang.Record
hfds DRESS_CLOTH,NARROW,WIDEST,byCloth,nap

CLSS public final static !enum dev.hingepoint.svg.print.ClothWidths$Nap
 outer dev.hingepoint.svg.print.ClothWidths
fld public final static dev.hingepoint.svg.print.ClothWidths$Nap AS_CARD
fld public final static dev.hingepoint.svg.print.ClothWidths$Nap ONE_WAY
meth public static dev.hingepoint.svg.print.ClothWidths$Nap valueOf(java.lang.String)
meth public static dev.hingepoint.svg.print.ClothWidths$Nap[] values()
supr java.lang.Enum<dev.hingepoint.svg.print.ClothWidths$Nap>

CLSS public final dev.hingepoint.svg.print.EaseChart
meth public static java.lang.String svg(java.lang.String,java.util.List<dev.hingepoint.fit.Ease>,dev.hingepoint.pattern.Unit)
supr java.lang.Object
hfds BEYOND,LEFT,RIGHT,ROW,TOP,WIDTH,from,perMillimetre,rows,unit

CLSS public final dev.hingepoint.svg.print.FreeSpace
meth public java.util.Optional<dev.hingepoint.svg.page.Text> place(java.util.stream.Stream<dev.hingepoint.svg.page.Text>)
meth public static dev.hingepoint.svg.print.FreeSpace within(dev.hingepoint.curve.Box,double)
meth public void take(dev.hingepoint.svg.page.Stroke)
meth public void take(dev.hingepoint.svg.page.Text)
supr java.lang.Object
hfds FACTORY,ORIGIN,clear,inside,kept,taken

CLSS public final dev.hingepoint.svg.print.MeasuringSheet
meth public static java.lang.String svg()
supr java.lang.Object
hfds LEFT,RIGHT,ROOM,ROW

CLSS public final dev.hingepoint.svg.print.PrintOptions
cons public init(dev.hingepoint.svg.page.Paper,double,double,dev.hingepoint.svg.print.Calibration,dev.hingepoint.svg.print.Scale,dev.hingepoint.svg.print.PrintOptions$Pieces,dev.hingepoint.svg.print.PrintOptions$Original,dev.hingepoint.svg.print.ClothWidths,dev.hingepoint.pattern.Unit,java.lang.String,java.lang.String,java.util.Optional<dev.hingepoint.fit.Body>)
innr public final static !enum Original
innr public final static !enum Pieces
meth public dev.hingepoint.pattern.Unit unit()
meth public dev.hingepoint.svg.page.Paper paper()
meth public dev.hingepoint.svg.print.Calibration calibration()
meth public dev.hingepoint.svg.print.ClothWidths cloths()
meth public dev.hingepoint.svg.print.PrintOptions forBody(dev.hingepoint.fit.Body)
meth public dev.hingepoint.svg.print.PrintOptions forWhom(java.lang.String,java.lang.String)
meth public dev.hingepoint.svg.print.PrintOptions on(dev.hingepoint.svg.page.Paper)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.pattern.Unit)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.svg.print.Calibration)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.svg.print.ClothWidths)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.svg.print.PrintOptions$Original)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.svg.print.PrintOptions$Pieces)
meth public dev.hingepoint.svg.print.PrintOptions with(dev.hingepoint.svg.print.Scale)
meth public dev.hingepoint.svg.print.PrintOptions withMargin(double)
meth public dev.hingepoint.svg.print.PrintOptions withOverlap(double)
meth public dev.hingepoint.svg.print.PrintOptions$Original original()
meth public dev.hingepoint.svg.print.PrintOptions$Pieces pieces()
meth public dev.hingepoint.svg.print.Scale scale()
meth public double margin()
meth public double overlap()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public java.lang.String date()
meth public java.lang.String whoFor()
meth public java.util.Optional<dev.hingepoint.fit.Body> body()
meth public static dev.hingepoint.svg.print.PrintOptions of(dev.hingepoint.svg.page.Paper)
supr java.lang.Record
hfds LEAF,LONGEST_NAME,MANY_LEAVES,NARROWEST_OVERLAP,PROJECTED_WEIGHT,WIDEST_MARGIN,WIDEST_OVERLAP,body,calibration,cloths,date,margin,original,overlap,paper,pieces,scale,unit,whoFor

CLSS public final static !enum dev.hingepoint.svg.print.PrintOptions$Original
 outer dev.hingepoint.svg.print.PrintOptions
fld public final static dev.hingepoint.svg.print.PrintOptions$Original LEFT_OUT
fld public final static dev.hingepoint.svg.print.PrintOptions$Original SHOWN
meth public static dev.hingepoint.svg.print.PrintOptions$Original valueOf(java.lang.String)
meth public static dev.hingepoint.svg.print.PrintOptions$Original[] values()
supr java.lang.Enum<dev.hingepoint.svg.print.PrintOptions$Original>

CLSS public final static !enum dev.hingepoint.svg.print.PrintOptions$Pieces
 outer dev.hingepoint.svg.print.PrintOptions
fld public final static dev.hingepoint.svg.print.PrintOptions$Pieces AS_DRAWN
fld public final static dev.hingepoint.svg.print.PrintOptions$Pieces UNFOLDED
meth public static dev.hingepoint.svg.print.PrintOptions$Pieces valueOf(java.lang.String)
meth public static dev.hingepoint.svg.print.PrintOptions$Pieces[] values()
supr java.lang.Enum<dev.hingepoint.svg.print.PrintOptions$Pieces>

CLSS public final dev.hingepoint.svg.print.Printed
cons public init(java.lang.String,dev.hingepoint.svg.page.Drawn,java.util.List<dev.hingepoint.svg.page.Page>,java.util.List<dev.hingepoint.svg.page.Page>,int,java.util.List<dev.hingepoint.svg.print.Printed$Placed>,java.util.List<java.lang.String>,dev.hingepoint.svg.print.PrintOptions)
innr public final static Placed
meth public dev.hingepoint.svg.page.Drawn sheet()
meth public dev.hingepoint.svg.print.PrintOptions options()
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int leastPages()
meth public java.lang.String title()
meth public java.util.List<dev.hingepoint.svg.page.Page> all()
meth public java.util.List<dev.hingepoint.svg.page.Page> leaves()
meth public java.util.List<dev.hingepoint.svg.page.Page> pages()
meth public java.util.List<dev.hingepoint.svg.print.Printed$Placed> pieces()
meth public java.util.List<java.lang.String> notes()
meth public java.util.Optional<dev.hingepoint.svg.page.Page> toMeasure()
supr java.lang.Record
hfds leastPages,leaves,notes,options,pages,pieces,sheet,title

CLSS public final static dev.hingepoint.svg.print.Printed$Placed
 outer dev.hingepoint.svg.print.Printed
cons public init(java.lang.String,int,java.util.List<java.util.List<dev.hingepoint.curve.Point>>)
meth public final boolean equals(java.lang.Object)
meth public final int hashCode()
meth public final java.lang.String toString()
meth public int number()
meth public java.lang.String piece()
meth public java.util.List<java.util.List<dev.hingepoint.curve.Point>> rings()
supr java.lang.Record
hfds number,piece,rings

CLSS public final dev.hingepoint.svg.print.Printing
meth public static byte[] pdf(dev.hingepoint.svg.print.Printed)
meth public static dev.hingepoint.svg.print.Printed print(dev.hingepoint.pattern.Draft,dev.hingepoint.svg.print.PrintOptions)
meth public static dev.hingepoint.svg.print.Printed print(java.util.List<dev.hingepoint.pattern.Draft>,dev.hingepoint.svg.print.PrintOptions)
meth public static java.util.List<dev.hingepoint.svg.page.Page> pages(dev.hingepoint.pattern.Draft,java.util.Collection<java.lang.String>,dev.hingepoint.svg.print.PrintOptions)
meth public static java.util.Map<java.lang.String,java.lang.String> contents(dev.hingepoint.svg.print.Printed)
meth public static void write(dev.hingepoint.svg.print.Printed,java.nio.file.Path)
supr java.lang.Object
hfds cloths,drafts,drawn,notes,pieces,title
hcls OnPaper

CLSS public final !enum dev.hingepoint.svg.print.Scale
fld public final static dev.hingepoint.svg.print.Scale FULL
fld public final static dev.hingepoint.svg.print.Scale HALF
fld public final static dev.hingepoint.svg.print.Scale QUARTER
meth public double factor()
meth public java.lang.String words()
meth public static dev.hingepoint.svg.print.Scale parse(java.lang.String)
meth public static dev.hingepoint.svg.print.Scale valueOf(java.lang.String)
meth public static dev.hingepoint.svg.print.Scale[] values()
supr java.lang.Enum<dev.hingepoint.svg.print.Scale>
hfds factor,words

CLSS public final dev.hingepoint.svg.print.Upright
meth public static dev.hingepoint.curve.Motion of(dev.hingepoint.pattern.Piece)
supr java.lang.Object
hfds DOWN

CLSS abstract interface dev.hingepoint.svg.print.package-info

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

CLSS public abstract interface java.lang.constant.Constable
meth public abstract java.util.Optional<? extends java.lang.constant.ConstantDesc> describeConstable()

