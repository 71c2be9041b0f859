#include "tests/gallery/grabs.h"

#include <QApplication>

namespace frontwright::gallery {

void settle() {
    for (int turn = 0; turn < 5; ++turn)
        QApplication::processEvents();
}

void open(MainWindow& window, const char* sample, Unit unit) {
    const QString path =
        QStringLiteral(FRONTWRIGHT_SOURCE_DIR "/samples/%1/%1.frontwright").arg(sample);
    window.file().open(path);
    LengthStyle style = window.session().style();
    style.unit = unit;
    window.session().setStyle(style);
    settle();
}

QPixmap grabbed(QWidget& widget) {
    settle();
    return widget.grab();
}

QPixmap dialogOver(QDialog& dialog) {
    dialog.show();
    settle();
    return dialog.grab();
}

} // namespace frontwright::gallery
