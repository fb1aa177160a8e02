package dev.fairlead.measure.wire;
import dev.fairlead.measure.archform.*; import dev.fairlead.measure.mechanics.FoldSpec; import java.util.*;
public class ScratchMain {
  static BeamCase of(double[] x){ return new BeamCase(0.508,new dev.fairlead.measure.archform.BetaArch(x[0],x[1]),3,2.7,8.3,new FoldSpec(x[2],x[3],x[3],0,x[4]),new FoldSpec(x[5],x[6],x[6],0,x[7]),x[8],x[9],Double.isNaN(x[10])?OptionalDouble.empty():OptionalDouble.of(x[10])); }
  static double[] out(BeamAnswer b){ return new double[]{b.low(),b.high(),b.stress(),b.upHinged(),b.upHeld()}; }
  public static void main(String[] a){
    Random R=new Random(5); String[] nm={"W","D","rR","LR","tipR","rL","LL","tipL","sR","sL","h"};
    double[] step={0.3,0.3,0.1,0.2,3,0.1,0.2,3,0.2,0.2,0.3};
    int N=Integer.parseInt(a[0]); long t0=System.nanoTime(); int solves=0;
    for(int k=0;k<N;k++){ double r=0.9+0.6*R.nextDouble(), L=2.5+2.5*R.nextDouble(), tip=10+20*R.nextDouble(), s=0.8+1.7*R.nextDouble();
      double[] x={41+6*R.nextDouble(),21+6*R.nextDouble(),r,L,tip,r*(0.9+.2*R.nextDouble()),L*(0.9+.2*R.nextDouble()),tip,s,s*(0.7+.6*R.nextDouble()),2*R.nextDouble()};
      BeamAnswer base=BeamAnswer.of(of(x)); solves++; if(!base.found()) {System.out.println("# "+base.failure()); continue;}
      double[] f=out(base);
      StringBuilder sb=new StringBuilder(); for(double v:x) sb.append(String.format("%.4f ",v)); sb.append("| "); for(double v:f) sb.append(String.format("%.4f ",v)); sb.append("| ");
      for(int j=0;j<x.length;j++){ double[] up=x.clone(), dn=x.clone(); up[j]+=step[j]; dn[j]-=step[j]; double[] u=out(BeamAnswer.of(of(up))), d=out(BeamAnswer.of(of(dn))); solves+=2;
        for(int q=0;q<5;q++) sb.append(String.format("%.5f ", (u[q]-d[q])/(2*step[j]))); sb.append("; "); }
      System.out.println(sb);
    }
    System.err.printf("%.1f ms per answer%n",(System.nanoTime()-t0)/1e6/solves);
  }
}
