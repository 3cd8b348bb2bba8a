#pragma once

#include <QWidget>

#include "core/words/phrasebook.h"

namespace wardchalk::ui {

/// The standing caution at the bottom of the window, with the name of the house rules at its right.
class CautionBar : public QWidget {
  Q_OBJECT

 public:
  CautionBar(const QString& rulesName, const Phrasebook& book, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wardchalk::ui
