package dev.towerscribe.drawing;

/**
 * Advance widths of the sheet font, Liberation Sans Regular, in its own units of 1/2048 em, as its
 * hmtx table states them. Kept here so that text can be measured without opening the font file; a
 * test compares every one of them with that file.
 *
 * <p>Held as text, two characters for each code point, because a string constant costs nothing to
 * load: (first - '#') * 57 + (second - '#'). A width of zero stands for a code point that the font
 * lacks, or that needs more than setting one glyph beside the other: combining marks, writing from
 * right to left, invisible controls.
 */
final class GlyphWidths {
  private static final int BASE = 57;

  /** Runs of code points, first and last; their widths stand in the table one after another. */
  private static final int[][] RUNS = {
    {0x0020, 0x007E}, {0x00A0, 0x024F}, {0x0374, 0x04FF}, {0x1E00, 0x1EF9},
    {0x2000, 0x2026}, {0x202F, 0x2044}, {0x205E, 0x205E}, {0x20A0, 0x20B5},
    {0x20BF, 0x20BF}, {0x2105, 0x2105}, {0x2113, 0x2117}, {0x2122, 0x212E},
    {0x214D, 0x215E}, {0x2184, 0x2184}, {0x2190, 0x2195}, {0x21A8, 0x21A8},
    {0x21D4, 0x21D4}, {0x2202, 0x2206}, {0x220F, 0x221F}, {0x2229, 0x222B},
    {0x2248, 0x2248}, {0x2260, 0x2265}, {0x2302, 0x2302}, {0x2310, 0x2310},
    {0x2320, 0x2321}, {0x25A0, 0x25A1}, {0x25AA, 0x25D9}, {0x25E6, 0x25E6},
  };

  private static final String TABLE =
      ",[,[/N6[6[BY:Z)T.Z.Z0[7[,[.Z,[,[6[6[6[6[6[6[6[6[6[6[,[,[7[7[7[6[G>:Z:Z<Y<Y:Z8Y>Y<Y,["
          + "4Z:Z6[@X<Y>Y:Z>Y<Y:Z8Y<Y:ZDW:Z:Z8Y,[,[,[3T6[.Z6[6[4Z6[6[,[6[6[*[*[4Z*[@X6[6[6[6[.Z4Z"
          + ",[6[4Z<Y4Z4Z4Z/#,6/#7[,[.Z6[6[6[6[,66[.Z=>046[7[##=>6S186L.Z.Z.Z7K64.Z.Z.Z0*6[@Z@Z@Z"
          + "8Y:Z:Z:Z:Z:Z:ZFX<Y:Z:Z:Z:Z,[,[,[,[<Y<Y>Y>Y>Y>Y>Y7[>Y<Y<Y<Y<Y:Z:Z8Y6[6[6[6[6[6[BY4Z6["
          + "6[6[6[,[,[,[,[6[6[6[6[6[6[6[6L8Y6[6[6[6[4Z6[4Z:Z6[:Z6[:Z6[<Y4Z<Y4Z<Y4Z<Y4Z<Y9(<Y6[:Z"
          + "6[:Z6[:Z6[:Z6[:Z6[>Y6[>Y6[>Y6[>Y6[<Y6[<Y6[,[,[,[,[,[,[,[*[,[,[=:2Y4Z*[:Z4Z4Z6[*[6[*["
          + "6[->6[/#6[*[<Y6[<Y6[<Y6[8K<[6[>Y6[>Y6[>Y6[FXDW<Y.Z<Y.Z<Y.Z:Z4Z:Z4Z:Z4Z:Z4Z8Y,[8Y0>8Y"
          + ",[<Y6[<Y6[<Y6[<Y6[<Y6[<Y6[DW<Y:Z4Z:Z8Y4Z8Y4Z8Y4Z*[6[>1:D6[:D6[<Y<Y4Z<Y@(:D6[7#:Z>%8K"
          + "8Y6[>Y9;BH*[,[:Z4Z*[4ZC#<Y6[>YAQ:CB.:[>)6[:Z:Z4Z9/0I,[8Y,[8YAJ;&=T<Y>N4Z8Y4Z8Y8Y6D6D"
          + "6[6[3>4?6[,61S7[,[RVNWHJI,@X3/NWDX>K:Z6[,[*[>Y6[<Y6[<Y6[<Y6[<Y6[<Y6[6[:Z6[:Z6[FXBY>Y"
          + "6[>Y6[:Z4Z>Y6[>Y6[8Y6D*[RVNWHJ>Y6[H,9/<Y6[:Z6[FXBY>Y8Y:Z6[:Z6[:Z6[:Z6[,[,[,[,[>Y6[>Y"
          + "6[<Y.Z<Y.Z<Y6[<Y6[:Z4Z8Y,[6D2J<Y6[<8;?8L758Y4Z:Z6[:Z6[>Y6[>Y6[>Y6[>Y6[:Z4Z/B;E0.*[BT"
          + "BT:Z<Y4Z6[8Y4Z4Z7T33:Z<Y;#:Z6[4Z*[=?6[<Y.Z:Z4Z.Z.Z########.Z4Z4Z4Z,[##########.Z.Z:["
          + ",[?-A)0P##>R##AM>%*[:Z:Z6P;#:Z8Y<Y>Y,[:Z;#@X<Y:7>Y<Y:Z##9/8Y:Z?I:ZA$=T,[:Z7O3$6[*[6H"
          + "7O7I4Z7#3$2S6[6[*[4Z4Z7K4Z3(6[;P7<459-1.6H:45T<F?&*[6H6[6H?&##7I6H>NE;>N7*?&8E>Y6[<Y"
          + "4Z8Y1@9<6$>-7LC#@X;06[;/4Z:Z:Z8V8;=>6V3I1L8E7D4Z*[>Y2U2U:Z6[<Y@X;K7<<Y<Y<Y:Z:[B'6=<R"
          + ":Z,[,[4ZH[G4AJ7X<R9R<R:Z:D:Z6=;6:ZD-8K<R<R7X:D@X<Y>Y<R:Z<Y8Y9R>5:Z=D:YCXDJ?<BQ:D<RG4"
          + "<Y6[7D6(0)7Z6[;%3>7'7'2L7Z;K6S6[6=6[4Z3=4Z@C4Z7D5L?R@C9=<R5L56=Y6=6[6[6[0)564Z*[,[*["
          + "CC@.6[2L7'4Z6SS'9;>Y9$E*<G;#4ZC1;[@O;FHSB,8K3>?F;M>Y6[?T9I?T9IIEC/@X9#MPAES'9;<Y4Z5("
          + "##############<R7':D5L:Z6[4C1O6=0);(6LD-;%8K3>7X2L7X2L7X2L=H61<Y6SBE:3KSB2>&5L<Y4Z8Y"
          + "3=6[4Z6[4Z:Z4ZD1;R:Y5L:Y5L:Y6[AY:XAY:X,[D-;%:[6P:D7Z<Y6S<Y6S:Y5L@X;K*[:Z6[:Z6[FXBY:Z"
          + "6[>%6[>%6[D-;%8K3>8K6D<R7'<R7'>Y6[>Y6[>Y6[<R569R4Z9R4Z9R4Z:Y5L6=0)BQ<R6=0):Z4Z:Z4Z:Z"
          + "6[:Z6[:Z6[:Z6[<Y4Z<Y6[<Y6[<Y6[<Y6[<Y6[:Z6[:Z6[:Z6[:Z6[:Z6[8Y,[>Y6[<Y6[<Y6[<Y6[<Y6[<Y"
          + "6[,[*[,[,[:Z4Z:Z4Z:Z4Z6[*[6[*[6[*[6[*[@X@X@X@X@X@X<Y6[<Y6[<Y6[<Y6[>Y6[>Y6[>Y6[>Y6[:Z"
          + "6[:Z6[<Y.Z<Y.Z<Y.Z<Y.Z:Z4Z:Z4Z:Z4Z:Z4Z:Z4Z8Y,[8Y,[8Y,[8Y,[<Y6[<Y6[<Y6[<Y6[<Y6[:Z4Z:Z"
          + "4ZDW<YDW<YDW<YDW<YDW<Y:Z4Z:Z4Z:Z4Z8Y4Z8Y4Z8Y4Z6[,[<Y4Z6[*[####<1##:Z6[:Z6[:Z6[:Z6[:Z"
          + "6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[:Z6[,[*[,[*[>Y6[>Y6[>Y6[>Y"
          + "6[>Y6[>Y6[>Y6[AQ:CAQ:CAQ:CAQ:CAQ:C<Y6[<Y6[AJ;&AJ;&AJ;&AJ;&AJ;&:Z4Z:Z4Z:Z4Z:Z4Z4ZFX4Z"
          + "FX.[+[([6[,[*.&###########.Z##6[6[FXFX1S6S*[*[*[*[.Z.Z.Z.Z6[6[/D######FX*.FX##)M/L/L"
          + "########.Z.Z##4Z##.Z##########)#,[6[<Y<Y6[6[@X<YJ4LRDWA@5<6[:Z8YFX5L:Z>Y:Z6[<Y=EBQ.F"
          + "####IB=>FX######>E##############8CDU4E########@Z@Z############@Z@Z@Z@Z4ZFX4ZFX4ZFX4Z"
          + "4ZFX4N######8[@D##<F7[####)#######,[6L######<FF-<R##,S6L6L7ZFX##6L6L8K7[8K8K8K8K/M/M"
          + "FX##########FC##############FC##FC##############FC##########4N8K87####8K8K8K8K8K8K8K"
          + "8K8K8K8K/M";

  private GlyphWidths() {}

  /**
   * The width of one character.
   *
   * @param codePoint Unicode code point
   * @return units of 1/2048 em; 0 if it cannot be written
   */
  static int of(int codePoint) {
    int before = 0;
    for (int[] run : RUNS) {
      if (codePoint <= run[1]) {
        int at = 2 * (before + codePoint - run[0]);
        return codePoint < run[0]
            ? 0
            : (TABLE.charAt(at) - '#') * BASE + TABLE.charAt(at + 1) - '#';
      }
      before += run[1] - run[0] + 1;
    }
    return 0;
  }
}
