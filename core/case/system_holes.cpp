#include "core/case/system_holes.h"

namespace frontwright {

SystemHoles usualSystemHoles(Length bottomPanel) {
    SystemHoles holes;
    holes.first = bottomPanel.half();
    holes.pitch = Length::millimetres(32);
    holes.setback = Length::millimetres(37);
    holes.diameter = Length::millimetres(5);
    return holes;
}

} // namespace frontwright
