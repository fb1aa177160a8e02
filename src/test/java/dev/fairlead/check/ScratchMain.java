package dev.fairlead.check;
import dev.fairlead.measure.*; import dev.fairlead.measure.part.Parts; import dev.fairlead.rules.*; import dev.fairlead.intake.*; import java.nio.file.*; import java.util.*;
public class ScratchMain { public static void main(String[] a) throws Exception { long t0=System.nanoTime(); Rulebase R=Rulebase.builtIn(); System.out.println("rulebase "+(System.nanoTime()-t0)/1e6);
 var c=CaseReader.read(Files.readAllBytes(Path.of(a[0])), a[0], Format.BY_NAME).value().get();
 Checker k=new Checker(R);
 for (int i=0;i<Integer.parseInt(a[1]);i++){ long t=System.nanoTime(); k.check(c,"0",CheckOptions.USUAL.with(Doubting.NONE)); long t1=System.nanoTime(); k.check(c,"0",CheckOptions.USUAL); long t2=System.nanoTime(); 
   k.check(c,"0",CheckOptions.USUAL.withoutWorkings()); long t3=System.nanoTime();
   if(i<3||i%10==0) System.out.printf("none %.1f first-order %.1f bare %.1f ms%n",(t1-t)/1e6,(t2-t1)/1e6,(t3-t2)/1e6);}
 var d=k.check(c,"0",CheckOptions.USUAL).doubt().get();
 d.flips().stream().filter(f->f.analytic()>0.1).sorted(Comparator.comparingDouble(f->-f.analytic())).forEach(System.out::println);
 d.repeat().stream().limit(12).forEach(System.out::println);
 for(int i=0;i<3;i++){ long t=System.nanoTime(); k.check(c,"0",CheckOptions.USUAL.with(Doubting.drawn(2000,1))); System.out.printf("2000 draws %.1f ms%n",(System.nanoTime()-t)/1e6);}
}}
