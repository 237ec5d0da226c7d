<?xml version="1.0" encoding="UTF-8"?>
<!--
  The yardstick in XSLT 1.0: a partwise score at sounding pitch. Keys and pitches move by the transposition
  that the part begins with, and <transpose> goes; accidentals, clefs and harmony are left alone, so this
  does less than the product does.
-->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform">
  <xsl:output method="xml" encoding="UTF-8"/>
  <xsl:variable name="steps" select="'CDEFGAB'"/>
  <!-- The semitones of the steps above C, two digits each. -->
  <xsl:variable name="naturals" select="'00020405070911'"/>

  <xsl:template match="@*|node()">
    <xsl:param name="diatonic" select="0"/>
    <xsl:param name="chromatic" select="0"/>
    <xsl:copy>
      <xsl:apply-templates select="@*"/>
      <xsl:apply-templates select="node()">
        <xsl:with-param name="diatonic" select="$diatonic"/>
        <xsl:with-param name="chromatic" select="$chromatic"/>
      </xsl:apply-templates>
    </xsl:copy>
  </xsl:template>

  <xsl:template match="part[measure]">
    <xsl:variable name="transpose" select="(measure[1]/attributes/transpose)[1]"/>
    <xsl:copy>
      <xsl:apply-templates select="@*"/>
      <xsl:apply-templates select="node()">
        <xsl:with-param name="diatonic" select="sum($transpose/diatonic) + 7 * sum($transpose/octave-change)"/>
        <xsl:with-param name="chromatic" select="sum($transpose/chromatic) + 12 * sum($transpose/octave-change)"/>
      </xsl:apply-templates>
    </xsl:copy>
  </xsl:template>

  <xsl:template match="transpose"/>

  <xsl:template match="fifths">
    <xsl:param name="diatonic" select="0"/>
    <xsl:param name="chromatic" select="0"/>
    <xsl:variable name="fifths" select=". + 7 * $chromatic - 12 * $diatonic"/>
    <fifths>
      <xsl:choose>
        <xsl:when test="$fifths &gt; 7"><xsl:value-of select="$fifths - 12"/></xsl:when>
        <xsl:when test="$fifths &lt; -7"><xsl:value-of select="$fifths + 12"/></xsl:when>
        <xsl:otherwise><xsl:value-of select="$fifths"/></xsl:otherwise>
      </xsl:choose>
    </fifths>
  </xsl:template>

  <xsl:template match="pitch">
    <xsl:param name="diatonic" select="0"/>
    <xsl:param name="chromatic" select="0"/>
    <xsl:variable name="from" select="string-length(substring-before($steps, step))"/>
    <xsl:variable name="position" select="$from + 7 * octave + $diatonic"/>
    <xsl:variable name="octave" select="floor($position div 7)"/>
    <xsl:variable name="to" select="$position - 7 * $octave"/>
    <xsl:variable name="sounds"
      select="substring($naturals, 2 * $from + 1, 2) + sum(alter) + 12 * octave + $chromatic"/>
    <xsl:variable name="alter" select="$sounds - 12 * $octave - substring($naturals, 2 * $to + 1, 2)"/>
    <pitch>
      <step><xsl:value-of select="substring($steps, $to + 1, 1)"/></step>
      <xsl:if test="$alter != 0"><alter><xsl:value-of select="$alter"/></alter></xsl:if>
      <octave><xsl:value-of select="$octave"/></octave>
    </pitch>
  </xsl:template>
</xsl:stylesheet>
