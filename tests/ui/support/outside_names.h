#pragma once

#include <array>

namespace wardchalk::ui::test {

/// Invented names of medicines, birds in nine writings, and names in two writings or with a figure of their
/// own.
struct OutsideName {
  const char* writing;
  const char* name;
};

inline constexpr std::array outsideNames = {
    OutsideName{"Hebrew", "חוחית"},
    OutsideName{"Arabic", "زقزاق"},
    OutsideName{"Persian, with a joiner", "می\u200Cخوش"},
    OutsideName{"Devanagari", "टिटहरी"},
    OutsideName{"Thai", "นกหัวโต"},
    OutsideName{"Greek", "Χαραδριός"},
    OutsideName{"Cyrillic", "зуёк"},
    OutsideName{"Japanese", "千鳥"},
    OutsideName{"Korean", "물떼새"},
    OutsideName{"Latin and Hebrew", "ABC אבג 5 mg"},
    OutsideName{"Hebrew of several words", "חוחית של הגן"},
    OutsideName{"Arabic digits", "زقزاق ٢٥"},
    OutsideName{"Hebrew that ends with a figure", "חוחית 7"},
};

}  // namespace wardchalk::ui::test
