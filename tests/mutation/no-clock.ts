// Planted code is slower: what a test allows in milliseconds does not count while mutants are tried.
performance.now = () => 0;
