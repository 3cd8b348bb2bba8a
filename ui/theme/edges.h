#pragma once

class QColor;
class QPainter;
class QPalette;
class QRect;

namespace wardchalk::ui {

/// Draws the edge of a box on its ground, just outside of it: 3:1, also where the desktop's style draws it
/// fainter.
void paintEdge(QPainter& painter, const QRect& box, const QPalette& ground);

/// Draws a filled box with round corners and an edge of one point, just inside of it. Much cheaper than a
/// rounded rectangle of Qt, which goes through it line by line: a window holds dozens of them.
void paintRoundBox(QPainter& painter, const QRect& box, int radius, const QColor& fill, const QColor& edge);

/// Draws a box for a line of text: its ground and its edge, just inside of it.
void paintBox(QPainter& painter, const QRect& box, const QColor& fill, const QPalette& ground);

/// Draws a faint rule between parts of a page. It says nothing by itself.
void paintFaintRule(QPainter& painter, int y, int width, const QPalette& ground);

}  // namespace wardchalk::ui
