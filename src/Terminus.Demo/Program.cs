Console.WriteLine("Terminus");
