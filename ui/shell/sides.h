#pragma once

#include <QSplitter>

namespace wardchalk::ui {

class Form;
class WorkingPane;

/// Form and working beside each other, with an edge between them that can be drawn. Where the window is too
/// narrow for both, by the letters, they are one column: flag and amount stay on top, the form and the steps
/// scroll below them.
class Sides : public QSplitter {
  Q_OBJECT

 public:
  Sides(Form* form, WorkingPane* pane, QWidget* parent = nullptr);

  [[nodiscard]] bool isOneColumn() const { return oneColumn_; }

  /// How wide somebody made the form; 0 while nobody did: it then has about a third.
  [[nodiscard]] int formWidth() const { return formWidth_; }
  /// What was kept; a width that no window has room for is brought within it.
  void setFormWidth(int width);

  /// Draw the edge by one step, as far as both sides have room; in one column there is none.
  void widenForm() { moveEdge(1); }
  void narrowForm() { moveEdge(-1); }

  /// To be told when the size of letters is another.
  void follow();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void moveEdge(int steps);
  [[nodiscard]] int mostForForm() const;
  void becomeOneColumn();
  void becomeTwo();
  void placeEdge();

  Form* form_;
  WorkingPane* pane_;
  int formWidth_ = 0;
  bool sized_ = false;
  bool oneColumn_ = false;
};

}  // namespace wardchalk::ui
